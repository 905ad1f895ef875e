Profile: Lesion
Parent: Condition
Id: dr-lesion
Title: "Lesion that was resected"
Description: "The one lesion of the case; indication, findings and reports point to it."
* insert Published
* insert Identified
* code 1..1
* bodySite 1..*
* obeys dr-r-con-2

Profile: Complication
Parent: Condition
Id: dr-complication
Title: "Complication of a dissection"
Description: "An adverse event as a Condition, linked back to the Procedure by event-partOf."
* insert Published
* insert Identified
* code 1..1
* extension contains http://hl7.org/fhir/StructureDefinition/event-partOf named partOf 1..1
* obeys dr-r-con-2
* obeys dr-r-dr-8
