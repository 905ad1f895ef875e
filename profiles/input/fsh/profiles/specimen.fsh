Profile: ResectionSpecimen
Parent: Specimen
Id: dr-specimen
Title: "Resected specimen"
Description: "One container; pieces are specimens of their own with a parent."
* insert Published
* insert Identified
* type 1..1
* subject 1..1
* request 1..*
* collection 1..1
* collection.bodySite 1..1
* obeys dr-r-spm-4
