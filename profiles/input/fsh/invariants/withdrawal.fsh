Invariant: dr-wdr-1
Description: "A withdrawn case leaves nothing valid: where the case Procedure is entered in error, everything is"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status = 'entered-in-error').empty() or entry.resource.where($this.is(Provenance).not()).all(iif($this.is(Condition), verificationStatus.coding.where(code = 'entered-in-error').exists(), status = 'entered-in-error'))"

Invariant: dr-wdr-2
Description: "The activity is a nullification where the case is withdrawn, and only there"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status = 'entered-in-error').exists() = entry.resource.ofType(Provenance).activity.coding.where(code = 'NULLIFY').exists()"
