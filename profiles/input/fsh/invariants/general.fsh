Invariant: dr-gen-1
Description: "Every Quantity with a value has UCUM system and code"
Severity: #error
Expression: "entry.resource.descendants().ofType(Quantity).where(value.exists()).all(system = 'http://unitsofmeasure.org' and code.exists())"

Invariant: dr-gen-2
Description: "Every Coding has system and code"
Severity: #error
Expression: "entry.resource.descendants().ofType(Coding).all(system.exists() and code.exists())"

Invariant: dr-gen-3
Description: "Every CodeableConcept has a coding or text"
Severity: #error
Expression: "entry.resource.descendants().ofType(CodeableConcept).all(coding.exists() or text.exists())"

Invariant: dr-gen-4
Description: "Every resource but Provenance has an identifier with system and value"
Severity: #error
Expression: "entry.resource.where($this.is(Provenance).not()).all(identifier.where(system.exists() and value.exists()).exists())"

Invariant: dr-gen-5
Description: "Every resource claims a profile of this package"
Severity: #error
Expression: "entry.resource.all(meta.profile.where($this.startsWith('https://dissection-records.example/fhir/StructureDefinition/')).exists())"

Invariant: dr-gen-6
Description: "A dateTime with a time of day has a zone"
Severity: #error
Expression: "entry.resource.descendants().ofType(dateTime).all(toString().length() <= 10 or toString().matches('(Z|[+-][0-9]{2}:[0-9]{2})$'))"

Invariant: dr-gen-7
Description: "The structural links of an Observation (partOf, specimen, hasMember, derivedFrom) are literal, never by identifier alone"
Severity: #error
Expression: "entry.resource.ofType(Observation).all(partOf.combine(specimen).combine(hasMember).combine(derivedFrom).all(reference.exists()))"

Invariant: dr-gen-8
Description: "Every coding of a terminology that is not of this package has a display"
Severity: #warning
Expression: "entry.resource.descendants().ofType(Coding).where(system.startsWith('https://dissection-records.example/fhir/').not()).all(display.exists())"

Invariant: dr-gen-9
Description: "No extension outside of the allowed list"
Severity: #error
Expression: "entry.resource.extension.combine(entry.resource.modifierExtension).combine(entry.resource.descendants().extension).combine(entry.resource.descendants().modifierExtension).url.all($this in ('http://hl7.org/fhir/StructureDefinition/event-partOf' | 'http://hl7.org/fhir/StructureDefinition/event-statusReason' | 'http://hl7.org/fhir/StructureDefinition/quantity-precision' | 'http://hl7.org/fhir/StructureDefinition/condition-dueTo' | 'http://hl7.org/fhir/StructureDefinition/diagnosticReport-addendumOf' | 'http://hl7.org/fhir/StructureDefinition/diagnosticReport-replaces'))"
