// Onset by its day alone is held against the day of the end, as the sender writes it.
Invariant: dr-con-1
Description: "A complication after the procedure starts at or after its end"
Severity: #error
Expression: "entry.resource.ofType(Condition).where(verificationStatus.coding.where(code = 'entered-in-error').empty() and onset.exists() and code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/adverse-event' and (code in ('perforation' | 'intraprocedural-bleeding' | 'muscle-layer-injury')).not()).exists()).onset.ofType(dateTime).all(iif(toString().length() > 10, $this >= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end, toString() >= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end.toString().replaceMatches('T.*$', '')))"
