Invariant: dr-cli-12
Description: "A non-curative class leads to a request for a meeting or further treatment"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability').exists()).value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability-group' and code = 'non-curative').exists() implies entry.resource.ofType(ServiceRequest).where(status in ('active' | 'completed' | 'revoked') and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/request-kind' and code in ('multidisciplinary-meeting' | 'surgery-referral' | 'additional-treatment')).exists()).exists()"

// What was done, put off or revoked is a plan too: of somebody who has died nothing is active.
Invariant: dr-cli-13
Description: "A final verdict on the case is accompanied by a plan"
Severity: #warning
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability').exists()).where(status in ('final' | 'amended' | 'corrected')).exists() implies entry.resource.ofType(ServiceRequest).where(intent = 'plan' and status != 'entered-in-error').exists()"

Invariant: dr-fol-1
Description: "An active request for follow-up endoscopy is a plan with a window after the Procedure"
Severity: #error
Expression: "entry.resource.ofType(ServiceRequest).where(status = 'active' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/request-kind' and code in ('upper-follow-up-endoscopy' | 'lower-follow-up-endoscopy')).exists()).all(intent = 'plan' and occurrence.ofType(Period).start.exists() and occurrence.ofType(Period).end >= occurrence.ofType(Period).start and (%resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end.empty() or occurrence.ofType(Period).start > %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end))"

Invariant: dr-fol-2
Description: "A follow-up request names its reason and its plan number"
Severity: #error
Expression: "entry.resource.ofType(ServiceRequest).where(intent = 'plan').all(reasonReference.exists() and requisition.value.exists())"

Invariant: dr-fol-7
Description: "The active follow-up requests are of one plan"
Severity: #error
Expression: "entry.resource.ofType(ServiceRequest).where(intent = 'plan' and status = 'active').requisition.value.distinct().count() <= 1"

Invariant: dr-fol-8
Description: "A request that another one replaces is not active"
Severity: #error
Expression: "entry.where(resource.is(ServiceRequest) and resource.status = 'active').fullUrl.intersect(entry.resource.ofType(ServiceRequest).replaces.reference).empty()"
