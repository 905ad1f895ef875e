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

Profile: PathologyReport
Parent: DiagnosticReport
Id: dr-pathology-report
Title: "Pathology report, transcribed"
Description: "What the note system sent of a report of the laboratory, which keeps its own; the tag transcribed tells the difference."
* insert Published
* insert Identified
* insert LocalCoding(code, report-kind, 1..1)
* extension contains http://hl7.org/fhir/StructureDefinition/event-partOf named partOf 1..1
* meta.tag 1..*
* category 1..*
* subject 1..1
* specimen 1..*
* basedOn 1..*
* obeys dr-r-dr-2
* obeys dr-r-dr-8

Profile: FollowUpReport
Parent: DiagnosticReport
Id: dr-follow-up-report
Title: "Report of a follow-up endoscopy"
Description: "The report of the endoscopy unit on one examination after the dissection; preliminary while tissue waits."
* insert Published
* insert Identified
* insert LocalCoding(code, report-kind, 1..1)
* extension contains http://hl7.org/fhir/StructureDefinition/event-partOf named partOf 1..1
* category 1..*
* subject 1..1
* obeys dr-r-dr-2
* obeys dr-r-dr-8
