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

Invariant: dr-fol-3
Description: "An Appointment is based on a request of the Bundle and says for when"
Severity: #error
Expression: "entry.resource.ofType(Appointment).all(basedOn.reference.exists() and basedOn.reference.all($this in %resource.entry.where(resource.is(ServiceRequest)).fullUrl) and (requestedPeriod.exists() or start.exists()))"

// A booked one is the word of a scheduler and stays: dr-fol-11 asks that a person looks at it.
Invariant: dr-fol-4
Description: "An Appointment that nobody has booked yet stands on an active request"
Severity: #error
Expression: "entry.resource.ofType(Appointment).where(status in ('proposed' | 'pending' | 'waitlist')).basedOn.reference.all($this in %resource.entry.where(resource.is(ServiceRequest) and resource.status = 'active').fullUrl)"

Invariant: dr-fol-5
Description: "A cancelled Appointment has a reason"
Severity: #error
Expression: "entry.resource.ofType(Appointment).where(status = 'cancelled').all(cancelationReason.exists())"

Invariant: dr-fol-6
Description: "A proposed Appointment has no start and end of ours: the scheduler gives them"
Severity: #error
Expression: "entry.resource.ofType(Appointment).where(status = 'proposed').all(start.empty() and end.empty())"

Invariant: dr-fol-9
Description: "A request has at most one Appointment that is proposed or booked"
Severity: #error
Expression: "entry.resource.ofType(Appointment).where(status in ('proposed' | 'pending' | 'waitlist' | 'booked' | 'arrived' | 'checked-in')).basedOn.reference.isDistinct()"

Invariant: dr-fol-10
Description: "A Task is about a request of the Bundle"
Severity: #error
Expression: "entry.resource.ofType(Task).all(focus.reference.exists() and focus.reference.all($this in %resource.entry.where(resource.is(ServiceRequest)).fullUrl))"

Invariant: dr-fol-11
Description: "A booked Appointment on a request that was revoked or entered in error is to be checked by a person"
Severity: #warning
Expression: "entry.where(resource.is(ServiceRequest) and resource.status in ('revoked' | 'entered-in-error')).fullUrl.intersect(entry.resource.ofType(Appointment).where(status = 'booked').basedOn.reference).all($this in %resource.entry.resource.ofType(Task).where(status = 'requested' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/request-kind' and code = 'booking-check').exists()).focus.reference)"

Invariant: dr-fol-12
Description: "A task that is to be done is about an active request, unless it is to check a booking"
Severity: #error
Expression: "entry.resource.ofType(Task).where(status = 'requested' and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/request-kind' and code = 'booking-check').exists().not()).focus.reference.all($this in %resource.entry.where(resource.is(ServiceRequest) and resource.status = 'active').fullUrl)"

Invariant: dr-fol-13
Description: "An Appointment is for the patient of the case"
Severity: #error
Expression: "entry.resource.ofType(Appointment).empty() or entry.resource.ofType(Appointment).participant.actor.where(type = 'Patient').combine(entry.resource.ofType(Procedure).subject).select(iif(reference.exists(), reference, identifier.value)).distinct().count() = 1"
