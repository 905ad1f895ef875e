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

Profile: FollowUpRequest
Parent: ServiceRequest
Id: dr-follow-up-request
Title: "Follow-up request"
Description: "One examination or task of the follow-up plan, proposed to those who order and book; draft while pathology is awaited, on hold until a person confirms it."
* insert Published
* insert Identified
* insert LocalCoding(code, request-kind, 1..1)
* intent = #plan
* supportingInfo 1..*
