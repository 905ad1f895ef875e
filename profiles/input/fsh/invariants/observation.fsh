Invariant: dr-obs-1
Description: "Every Observation is part of a Procedure of the Bundle"
Severity: #error
Expression: "entry.resource.ofType(Observation).all(partOf.reference.where($this in %resource.entry.where(resource.is(Procedure)).fullUrl).exists())"

Invariant: dr-obs-2
Description: "Every Observation.code has exactly one coding of the item code system of this package"
Severity: #error
Expression: "entry.resource.ofType(Observation).all(code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation').count() = 1)"

Invariant: dr-obs-3
Description: "A non-cancelled Observation has a value, a component, a member or a reason for absence"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status in ('preliminary' | 'final' | 'amended' | 'corrected')).all(value.exists() or component.exists() or hasMember.exists() or dataAbsentReason.exists())"

Invariant: dr-obs-4
Description: "A component has a value or a reason for absence, never both"
Severity: #error
Expression: "entry.resource.ofType(Observation).component.all(value.exists() xor dataAbsentReason.exists())"

Invariant: dr-obs-5
Description: "A group (hasMember) carries no components"
Severity: #error
Expression: "entry.resource.ofType(Observation).all(hasMember.empty() or component.empty())"

Invariant: dr-obs-6
Description: "Values are of searchable types only: no boolean, integer or string"
Severity: #error
Expression: "entry.resource.ofType(Observation).all(value.combine(component.value).all($this.is(CodeableConcept) or $this.is(Quantity) or $this.is(dateTime) or $this.is(Period)))"

// A follow-up endoscopy looks at the same lesion again, so each Procedure asks each item once; a focus
// by identifier alone is a request of others, and several may be declined.
Invariant: dr-obs-7
Description: "Each item, by each method, occurs at most once for a Condition in a Procedure among valid Observations"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error').where(focus.reference.exists()).select(partOf.reference.first() & '|' & focus.reference.first() & '|' & code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation').code.first() & '|' & iif(method.exists(), method.coding.code.first(), '')).isDistinct()"

Invariant: dr-obs-8
Description: "Observation.hasMember and derivedFrom within the Bundle point to Observations"
Severity: #error
Expression: "entry.resource.ofType(Observation).select(hasMember.combine(derivedFrom)).reference.where($this.startsWith('urn:uuid:')).all($this in %resource.entry.where(resource.is(Observation)).fullUrl)"

Invariant: dr-obs-9
Description: "A computed Observation (profile dr-computed, or an item that is always computed) names its inputs or its rule"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(status != 'entered-in-error').where(meta.profile.where($this.endsWith('/dr-computed')).exists() or code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code in ('specimen-area' | 'dissection-speed' | 'procedure-duration' | 'dissection-duration' | 'stricture-risk' | 'curability' | 'bleeding-risk-score' | 'node-risk' | 'difficulty-score')).exists()).all(derivedFrom.exists() or method.exists())"

Invariant: dr-obs-10
Description: "A pathology Observation refers to a Specimen of the Bundle"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(meta.profile.where($this.endsWith('/dr-pathology-finding')).exists()).all(specimen.reference in %resource.entry.where(resource.is(Specimen)).fullUrl)"

// A contact or a decision may follow an operation or another decision.
Invariant: dr-obs-11
Description: "Observation.focus points to a Condition of the Bundle, and what happened later to what led to it"
Severity: #error
Expression: "entry.resource.ofType(Observation).where(meta.profile.where($this.endsWith('/dr-later-finding')).empty()).focus.reference.all($this in %resource.entry.where(resource.is(Condition)).fullUrl) and entry.resource.ofType(Observation).focus.reference.all($this in %resource.entry.where(resource.is(Condition) or resource.is(Procedure) or resource.is(Observation)).fullUrl)"
