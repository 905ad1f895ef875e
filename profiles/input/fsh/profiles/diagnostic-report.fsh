Profile: EndoscopyReport
Parent: DiagnosticReport
Id: dr-endoscopy-report
Title: "Endoscopy report"
Description: "The report of the endoscopy unit; preliminary while a specimen waits for pathology."
* insert Published
* insert Identified
* insert LocalCoding(code, report-kind, 1..1)
* extension contains http://hl7.org/fhir/StructureDefinition/event-partOf named partOf 1..1
* category 1..*
* subject 1..1
* obeys dr-r-dr-2
* obeys dr-r-dr-8
