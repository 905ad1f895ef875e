// What a scheduler has booked is still booked, until the scheduler says otherwise.
Invariant: dr-wdr-1
Description: "A withdrawn case leaves nothing valid: where the case Procedure is entered in error, everything is, but for appointments, of which none is proposed, and the task to check them"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status = 'entered-in-error').empty() or entry.resource.where($this.is(Provenance).not()).all(iif($this.is(Condition), verificationStatus.coding.where(code = 'entered-in-error').exists(), status = 'entered-in-error' or ($this.is(Appointment) and status in ('booked' | 'cancelled' | 'noshow')) or ($this.is(Task) and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/request-kind' and code = 'booking-check').exists())))"

Invariant: dr-wdr-2
Description: "The activity is a nullification where the case is withdrawn, and only there"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status = 'entered-in-error').exists() = entry.resource.ofType(Provenance).activity.coding.where(code = 'NULLIFY').exists()"
