Invariant: dr-pro-1
Description: "A completed case Procedure has a performed period with its start before its end"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status = 'completed').all(performed.ofType(Period).start.exists() and performed.ofType(Period).end.exists() and performed.ofType(Period).start < performed.ofType(Period).end)"

Invariant: dr-pro-2
Description: "The case Procedure has a body site, an indication and a performer"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).all(bodySite.exists() and reasonReference.exists() and performer.exists())"

Invariant: dr-pro-3
Description: "Procedure.complicationDetail points to Conditions of the Bundle"
Severity: #error
Expression: "entry.resource.ofType(Procedure).complicationDetail.reference.all($this in %resource.entry.where(resource.is(Condition)).fullUrl)"

Invariant: dr-pro-4
Description: "Every complication Condition that is not entered in error is listed in Procedure.complicationDetail and linked back by event-partOf"
Severity: #error
Expression: "entry.where(resource.is(Condition) and resource.meta.profile.where($this.endsWith('/dr-complication')).exists() and resource.verificationStatus.coding.where(code = 'entered-in-error').empty()).all((fullUrl in %resource.entry.resource.ofType(Procedure).complicationDetail.reference) and resource.extension('http://hl7.org/fhir/StructureDefinition/event-partOf').value.ofType(Reference).reference.exists())"

Invariant: dr-pro-5
Description: "Procedure.report lists every DiagnosticReport of the Bundle that is not entered in error"
Severity: #error
Expression: "entry.where(resource.is(DiagnosticReport) and resource.status != 'entered-in-error').fullUrl.all($this in %resource.entry.resource.ofType(Procedure).report.reference)"

Invariant: dr-pro-6
Description: "A Procedure that was not done gives a reason, and has no specimen that is not entered in error"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(status = 'not-done').all(statusReason.exists()) and (entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).where(status = 'not-done').empty() or entry.resource.ofType(Specimen).where(status != 'entered-in-error').empty())"

Invariant: dr-pro-7
Description: "A sub-procedure that is not entered in error lies within the performed period of its parent"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(partOf.reference.where($this in %resource.entry.where(resource.is(Procedure)).fullUrl).exists() and performed.exists() and status != 'entered-in-error').all(performed.ofType(Period).start >= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).start and performed.ofType(Period).end <= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end)"
