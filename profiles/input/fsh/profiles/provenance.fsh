Profile: StateProvenance
Parent: Provenance
Id: dr-provenance
Title: "Provenance of one delivered state"
Description: "Who wrote, assembled and entered this state, and from which submission."
* insert Published
* activity 1..1
* entity 1..*
* obeys dr-r-prv-1
