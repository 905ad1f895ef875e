// R0 is one piece with both margins free: en bloc, HM0 and VM0.
Invariant: dr-cli-1
Description: "R0 needs a resection in one piece with free horizontal and vertical margins"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'resection-status').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/resection-status' and code = 'r0').exists() implies (entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'en-bloc').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/resection-integrity' and code = 'en-bloc').exists() and entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'lateral-margin').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/margin-status' and code = 'hm0').exists() and entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'vertical-margin').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/margin-status' and code = 'vm0').exists())"

Invariant: dr-cli-2
Description: "A curative verdict needs R0"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability-group' and code = 'curative').exists() implies entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'resection-status').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/resection-status' and code = 'r0').exists()"

// A lesion within the epithelium reaches no vessel: there the answer is not applicable.
Invariant: dr-cli-3
Description: "A curative verdict needs the absence of lymphovascular invasion"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability-group' and code = 'curative').exists() implies (entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'lymphovascular-invasion').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/finding-state' and code = 'absent').exists() or entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'lymphovascular-invasion').exists()).dataAbsentReason.coding.where(code = 'not-applicable').exists())"

// The classes no-rule (no published rule covers the tumour) and incomplete (lesion left in place)
// do not rest on the specimen: no pathologist could change them, so neither waits for a report.
Invariant: dr-cli-4
Description: "A final class of curability needs a final pathology report, but for no-rule and incomplete, which do not rest on the specimen; every verdict names its rule"
Severity: #error
Expression: "(entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability').exists()).where(status in ('final' | 'amended' | 'corrected')).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability' and (code in ('no-rule' | 'incomplete')).not()).exists() implies (entry.resource.ofType(DiagnosticReport).where(category.coding.where(code = 'SP').exists() and status in ('final' | 'amended' | 'corrected' | 'appended')).exists() or entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).report.reference.where($this.startsWith('urn:uuid:').not()).exists())) and entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability').exists()).all(method.exists())"

Invariant: dr-cli-9
Description: "An involved margin has no distance above zero"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'lateral-margin').exists()).combine(entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'vertical-margin').exists())).where(value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/margin-status' and code in ('hm1' | 'vm1')).exists()).component.where(code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'margin-distance').exists()).value.ofType(Quantity).all(value = 0)"

Invariant: dr-cli-10
Description: "A depth that is not the submucosa has no measured depth in it"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'invasion-depth').exists()).where(value.exists() and value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/invasion-depth' and code = 'sm').empty()).component.where(code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'submucosal-invasion-depth').exists()).empty()"

Invariant: dr-cli-14
Description: "The outcome of a case Procedure that is not entered in error is the resection status"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status != 'entered-in-error').outcome.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/resection-status').code.all($this in %resource.entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'resection-status').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/resection-status').code)"

Invariant: dr-cli-15
Description: "A lesion is confirmed by a final report, of ours or of the laboratory"
Severity: #error
Expression: "entry.resource.ofType(Condition).where(meta.profile.where($this.endsWith('/dr-lesion')).exists() and verificationStatus.coding.where(code = 'confirmed').exists()).empty() or entry.resource.ofType(DiagnosticReport).where(category.coding.where(code = 'SP').exists() and status in ('final' | 'amended' | 'corrected' | 'appended')).exists() or entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).report.reference.where($this.startsWith('urn:uuid:').not()).exists()"
