Invariant: dr-dr-1
Description: "DiagnosticReport.result points to Observations of the Bundle"
Severity: #error
Expression: "entry.resource.ofType(DiagnosticReport).result.reference.all($this in %resource.entry.where(resource.is(Observation)).fullUrl)"

Invariant: dr-dr-2
Description: "A final, amended, corrected or appended report has issued, performer and at least one result"
Severity: #error
Expression: "entry.resource.ofType(DiagnosticReport).where(status in ('final' | 'amended' | 'corrected' | 'appended')).all(issued.exists() and performer.exists() and result.exists())"

Invariant: dr-dr-3
Description: "No preliminary Observation is a result of a final report"
Severity: #error
Expression: "entry.where(resource.is(Observation) and resource.status in ('registered' | 'preliminary')).fullUrl.intersect(entry.resource.ofType(DiagnosticReport).where(status in ('final' | 'amended' | 'corrected' | 'appended')).result.reference).empty()"

Invariant: dr-dr-4
Description: "Every valid Observation is reached from a report, directly or by hasMember; a preliminary one is not yet where the endoscopy report is final already"
Severity: #error
Expression: "entry.where(resource.is(Observation) and resource.status != 'entered-in-error' and (resource.status in ('registered' | 'preliminary') and %resource.entry.resource.ofType(DiagnosticReport).where(code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/report-kind' and code = 'endoscopy-report').exists()).all(status in ('final' | 'amended' | 'corrected' | 'appended'))).not()).fullUrl.all(($this in %resource.entry.resource.ofType(DiagnosticReport).result.reference) or ($this in %resource.entry.resource.ofType(Observation).hasMember.reference))"

Invariant: dr-dr-5
Description: "A withdrawn report has no valid result left"
Severity: #error
Expression: "entry.resource.ofType(DiagnosticReport).where(status = 'entered-in-error').result.reference.intersect(%resource.entry.where(resource.is(Observation) and resource.status != 'entered-in-error').fullUrl).empty()"

Invariant: dr-dr-6
Description: "An endoscopy report is not called final while a specimen waits for its pathology report"
Severity: #error
Expression: "(entry.resource.ofType(Specimen).where(status = 'available').exists() and entry.resource.ofType(DiagnosticReport).where(category.coding.where(code = 'SP').exists() and status in ('final' | 'amended' | 'corrected' | 'appended')).empty()) implies entry.resource.ofType(DiagnosticReport).where(code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/report-kind' and code = 'endoscopy-report').exists()).all(status in ('registered' | 'partial' | 'preliminary' | 'cancelled' | 'entered-in-error'))"

Invariant: dr-dr-7
Description: "Pathology that is not entered in error is issued after the specimen was collected"
Severity: #error
Expression: "entry.resource.ofType(DiagnosticReport).where(category.coding.where(code = 'SP').exists() and issued.exists() and status != 'entered-in-error').all(issued > %resource.entry.resource.ofType(Specimen).collection.collected.ofType(dateTime).first())"

Invariant: dr-dr-8
Description: "A class of curability that a report concludes with is that of the verdict"
Severity: #error
Expression: "entry.resource.ofType(DiagnosticReport).conclusionCode.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability').code.all($this in %resource.entry.resource.ofType(Observation).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability').code)"

Invariant: dr-dr-9
Description: "A pathology report of ours names its accession, and is tagged as a transcription"
Severity: #error
Expression: "entry.resource.ofType(DiagnosticReport).where(meta.profile.where($this.endsWith('/dr-pathology-report')).exists()).all(identifier.where(type.coding.where(code = 'ACSN').exists() and system.exists() and value.exists()).exists() and meta.tag.where(system = 'https://dissection-records.example/fhir/CodeSystem/report-origin' and code = 'transcribed').exists())"
