Profile: UsedDevice
Parent: Device
Id: dr-device
Title: "Accessory or endoscope that was used"
Description: "By generic type only, never by a product name."
* insert Published
* insert Identified
* type 1..1

Profile: Injectate
Parent: MedicationAdministration
Id: dr-injectate
Title: "Submucosal injectate"
Description: "What was injected to lift the lesion; one entry for a mixture."
* insert Published
* insert Identified
* partOf 1..*
* dosage 1..1
* dosage.dose 1..1

Profile: DrugGiven
Parent: MedicationAdministration
Id: dr-drug-given
Title: "Drug given with the procedure"
Description: "Sedation, prophylaxis and other drugs of the session."
* insert Published
* insert Identified
* partOf 1..*

Profile: Antithrombotic
Parent: MedicationStatement
Id: dr-antithrombotic
Title: "Antithrombotic drug around the procedure"
Description: "One agent: held, stopped or continued, with the last dose as the end of its period."
* insert Published
* insert Identified

Profile: ImageLink
Parent: Media
Id: dr-media
Title: "Link to an image"
Description: "Where an image or a film of the procedure is kept; never its bytes."
* insert Published
* insert Identified
* partOf 1..*
* content.url 1..1
* content.data 0..0
