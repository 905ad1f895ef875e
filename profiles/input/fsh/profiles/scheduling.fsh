Profile: FollowUpAppointment
Parent: Appointment
Id: dr-follow-up-appointment
Title: "Follow-up appointment"
Description: "An examination that is proposed to schedulers, without a time of ours, or what a scheduler said of its booking. Appointments of other systems are read and never written."
* insert Published
* insert Identified
* basedOn 1..1
* basedOn only Reference(FollowUpRequest)
* insert LocalCoding(serviceType, request-kind, 1..1)
* obeys dr-r-app-1
* obeys dr-r-app-2

Profile: FollowUpTask
Parent: Task
Id: dr-follow-up-task
Title: "Follow-up task"
Description: "What a person decides or does for the follow-up, about a follow-up request. Nobody owns it yet: the unit gives it to somebody."
* insert Published
* insert Identified
* insert LocalCoding(code, request-kind, 1..1)
* intent = #plan
* focus 1..1
* focus only Reference(FollowUpRequest)
* for 1..1
* owner 0..0
