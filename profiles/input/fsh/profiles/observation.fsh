// What endoscopic findings and computed answers have in common.
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

Profile: Computed
Parent: Observation
Id: dr-computed
Title: "Computed answer"
Description: "Area, speed, duration, score, risk or class: computed from named inputs by a named rule."
* insert ObservationOfTheCase
* obeys dr-r-obs-9
