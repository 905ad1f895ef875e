Invariant: dr-med-1
Description: "Injectate is part of the Procedure and has a dose (one entry for a mixture)"
Severity: #error
Expression: "entry.resource.ofType(MedicationAdministration).where(meta.profile.where($this.endsWith('/dr-injectate')).exists()).all(partOf.reference.where($this in %resource.entry.where(resource.is(Procedure)).fullUrl).exists() and dosage.dose.value.exists())"

Invariant: dr-med-2
Description: "An antithrombotic statement says what was done with it (status) and when"
Severity: #warning
Expression: "entry.resource.ofType(MedicationStatement).all(status.exists() and effective.exists())"
