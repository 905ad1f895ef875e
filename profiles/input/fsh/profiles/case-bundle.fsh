Profile: CaseBundle
Parent: Bundle
Id: dr-case-bundle
Title: "Case of endoscopic submucosal dissection"
Description: "One case, which is one lesion, as one transaction. All rules across its resources stand here."
* insert Published
* type = #transaction
* entry 1..*
* entry.fullUrl 1..1
* entry.resource 1..1
* entry.request 1..1
* obeys dr-bdl-1
* obeys dr-bdl-2
* obeys dr-bdl-3
* obeys dr-bdl-4
* obeys dr-bdl-5
* obeys dr-bdl-6
* obeys dr-bdl-7
* obeys dr-bdl-8
* obeys dr-bdl-9
* obeys dr-bdl-10
* obeys dr-bdl-11
* obeys dr-bdl-12
* obeys dr-bdl-13
* obeys dr-bdl-14
* obeys dr-bdl-15
* obeys dr-bdl-16
* obeys dr-gen-1
* obeys dr-gen-2
* obeys dr-gen-3
* obeys dr-gen-4
* obeys dr-gen-5
* obeys dr-gen-6
* obeys dr-gen-7
* obeys dr-gen-8
* obeys dr-gen-9
* obeys dr-pro-1
* obeys dr-pro-2
* obeys dr-pro-3
* obeys dr-pro-4
* obeys dr-pro-5
* obeys dr-pro-6
* obeys dr-pro-7
* obeys dr-obs-1
* obeys dr-obs-2
* obeys dr-obs-3
* obeys dr-obs-4
* obeys dr-obs-5
* obeys dr-obs-6
* obeys dr-obs-7
* obeys dr-obs-8
* obeys dr-obs-9
* obeys dr-obs-10
* obeys dr-obs-11
* obeys dr-spm-1
* obeys dr-spm-2
* obeys dr-spm-3
* obeys dr-dr-1
* obeys dr-dr-2
* obeys dr-dr-3
* obeys dr-dr-4
* obeys dr-dr-5
* obeys dr-dr-6
* obeys dr-dr-7
* obeys dr-prv-1
* obeys dr-prv-2
* obeys dr-med-1
* obeys dr-med-2
