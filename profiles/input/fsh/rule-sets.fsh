// What every published artefact says of itself.
RuleSet: Published
* ^status = #active
* ^experimental = false

// Written by an identifier that the service gives and keeps.
RuleSet: Identified
* identifier 1..*
* identifier.system 1..1
* identifier.value 1..1

// So many codings of a code system of this package beside those of open terminologies.
RuleSet: LocalCoding(element, set, times)
* {element} 1..1
* {element}.coding 1..*
* {element}.coding ^slicing.discriminator.type = #value
* {element}.coding ^slicing.discriminator.path = "system"
* {element}.coding ^slicing.rules = #open
* {element}.coding contains local {times}
* {element}.coding[local].system 1..1
* {element}.coding[local].system = "https://dissection-records.example/fhir/CodeSystem/{set}"
* {element}.coding[local].code 1..1
* {element}.coding[local] from https://dissection-records.example/fhir/ValueSet/{set} (required)
