Invariant: dr-spm-1
Description: "The specimen was collected within the performed period of the case Procedure"
Severity: #error
Expression: "entry.resource.ofType(Specimen).where(status != 'entered-in-error').all(collection.collected.ofType(dateTime) >= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).start and collection.collected.ofType(dateTime) <= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end)"

Invariant: dr-spm-2
Description: "A Specimen has type, body site and, through its request, a link to the Procedure"
Severity: #error
Expression: "entry.resource.ofType(Specimen).all(type.exists() and collection.bodySite.exists() and request.reference.exists()) and entry.resource.ofType(ServiceRequest).where(specimen.exists()).all(supportingInfo.reference.where($this in %resource.entry.where(resource.is(Procedure)).fullUrl).exists())"

Invariant: dr-spm-3
Description: "The body site of a Specimen that is not entered in error shares a code with that of the case Procedure"
Severity: #error
Expression: "entry.resource.ofType(Specimen).where(status != 'entered-in-error').all(collection.bodySite.coding.code.intersect(%resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).bodySite.coding.code).exists())"
