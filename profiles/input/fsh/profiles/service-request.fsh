Profile: PathologyRequest
Parent: ServiceRequest
Id: dr-pathology-request
Title: "Request for histopathology"
Description: "The order that goes with the specimen; it ties the specimen to the Procedure."
* insert Published
* insert Identified
* insert LocalCoding(code, request-kind, 1..1)
* intent = #order
* specimen 1..*
* supportingInfo 1..*
