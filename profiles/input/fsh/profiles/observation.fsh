// What findings and computed answers have in common.
RuleSet: ObservationOfTheCase
* insert Published
* insert Identified
* insert LocalCoding(code, esd-observation, 1..1)
* subject 1..1
* partOf 1..*
* effective[x] 1..1
* component.code 1..1
* obeys dr-r-obs-1
* obeys dr-r-obs-3
* obeys dr-r-obs-4
* obeys dr-r-obs-5
* obeys dr-r-obs-6

Profile: EndoscopyFinding
Parent: Observation
Id: dr-endoscopy-finding
Title: "Finding of the endoscopy"
Description: "One answer of the endoscopist, or the reason for its absence."
* insert ObservationOfTheCase

Profile: PathologyFinding
Parent: Observation
Id: dr-pathology-finding
Title: "Finding in the specimen"
Description: "One answer of the pathologist, transcribed, or the reason for its absence."
* insert ObservationOfTheCase
* specimen 1..1

Profile: Computed
Parent: Observation
Id: dr-computed
Title: "Computed answer"
Description: "Area, speed, duration, score, risk or class: computed from named inputs by a named rule."
* insert ObservationOfTheCase
* obeys dr-r-obs-9

Profile: Curability
Parent: Observation
Id: dr-curability
Title: "Curability of the resection"
Description: "The class by a named rule set with its coarse group and reasons, or why there is none yet."
* insert ObservationOfTheCase
* focus 1..1
* method 1..1
* method from https://dissection-records.example/fhir/ValueSet/rule (required)
* value[x] only CodeableConcept
* value[x] from https://dissection-records.example/fhir/ValueSet/curability (required)
* obeys dr-r-obs-9
* obeys dr-r-rul-1
* obeys dr-r-cur-1
* obeys dr-r-cur-2
* obeys dr-r-cur-3
* obeys dr-r-cur-4

Profile: Score
Parent: Observation
Id: dr-score
Title: "Published score"
Description: "The points of a named score with its published group and rate, or why there are none."
* insert ObservationOfTheCase
* focus 1..1
* method 1..1
* method from https://dissection-records.example/fhir/ValueSet/rule (required)
* value[x] only Quantity
* interpretation 0..1
* interpretation from https://dissection-records.example/fhir/ValueSet/score-group (extensible)
* obeys dr-r-obs-9
* obeys dr-r-rul-1
* obeys dr-r-sco-1
* obeys dr-r-sco-2
* obeys dr-r-sco-3

Profile: LaterFinding
Parent: Observation
Id: dr-later-finding
Title: "What happened after the dissection"
Description: "A contact, a decision, a statement, or what was found with an event after the dissection."
* insert ObservationOfTheCase

Profile: FollowUpFinding
Parent: Observation
Id: dr-follow-up-finding
Title: "Finding of a follow-up endoscopy"
Description: "One answer of an examination after the dissection, part of its own Procedure."
* insert ObservationOfTheCase
