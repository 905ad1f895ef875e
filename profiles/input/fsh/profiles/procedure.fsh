Profile: EsdProcedure
Parent: Procedure
Id: dr-esd-procedure
Title: "Endoscopic submucosal dissection"
Description: "The resection of one lesion: its first identifier is the case, a second one the session."
* insert Published
* insert Identified
* insert LocalCoding(code, esd-procedure, 1..*)
* performed[x] only Period
* performer 1..*
* bodySite 1..*
* reasonReference 1..1
* reasonReference only Reference(Lesion)
* obeys dr-r-pro-1
* obeys dr-r-pro-6

Profile: SubProcedure
Parent: Procedure
Id: dr-sub-procedure
Title: "Procedure within or after a dissection"
Description: "Haemostasis, closure, dilatation: only where it has a time or an outcome of its own."
* insert Published
* insert Identified
* code 1..1
* obeys dr-r-pro-6

Profile: FollowUpEndoscopy
Parent: Procedure
Id: dr-follow-up
Title: "Follow-up endoscopy"
Description: "An examination that looked at the scar or its organ after the dissection; it may answer a follow-up request."
* insert Published
* insert Identified
* insert LocalCoding(code, later-procedure, 1..1)
* performed[x] 1..1
* reasonReference 1..*
* report 1..1
* obeys dr-r-pro-6
