Invariant: dr-bdl-1
Description: "The delivery is a transaction and every entry has fullUrl, resource and request"
Severity: #error
Expression: "type = 'transaction' and entry.exists() and entry.all(fullUrl.exists() and resource.exists() and request.exists())"

Invariant: dr-bdl-2
Description: "Every fullUrl is a urn:uuid in lower-case canonical form (version 8: keyed, RFC 9562)"
Severity: #error
Expression: "entry.fullUrl.all(matches('^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$'))"

Invariant: dr-bdl-3
Description: "fullUrl values are distinct"
Severity: #error
Expression: "entry.fullUrl.isDistinct()"

Invariant: dr-bdl-4
Description: "Every urn:uuid reference resolves to a fullUrl of this Bundle"
Severity: #error
Expression: "entry.resource.descendants().reference.where($this.startsWith('urn:uuid:')).all($this in %resource.entry.fullUrl)"

Invariant: dr-bdl-5
Description: "Only idempotent writes: PUT, or POST with ifNoneExist; never DELETE or plain POST"
Severity: #error
Expression: "entry.request.all(method = 'PUT' or (method = 'POST' and ifNoneExist.exists()))"

Invariant: dr-bdl-6
Description: "No two entries address the same request.url: an identity appears once in a transaction"
Severity: #error
Expression: "entry.request.where(method = 'PUT').url.isDistinct()"

Invariant: dr-bdl-7
Description: "A conditional URL searches by identifier with system and value and a percent-encoded bar"
Severity: #error
Expression: "entry.request.where(method = 'PUT' and url.contains('?')).url.all(matches('^[A-Z][A-Za-z]+\\\\?identifier=[^|&= ]+%7C[^|&= ]+$'))"

Invariant: dr-bdl-8
Description: "The resource carries the identifier that its conditional URL names (value part)"
Severity: #error
Expression: "entry.where(request.url.contains('?identifier=')).all(request.url.replaceMatches('^.*%7C', '') = resource.identifier.value.first())"

Invariant: dr-bdl-9
Description: "An entry with a conditional URL carries no resource.id"
Severity: #error
Expression: "entry.where(request.url.contains('?')).resource.id.empty()"

Invariant: dr-bdl-10
Description: "Exactly one case Procedure (profile dr-esd-procedure) is in the Bundle"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).count() = 1"

Invariant: dr-bdl-11
Description: "All patient references in the Bundle name the same patient"
Severity: #error
Expression: "entry.resource.select(subject.combine(patient).combine(for)).select(iif(reference.exists(), reference, identifier.value)).distinct().count() = 1"

Invariant: dr-bdl-12
Description: "Conditional references are used only for actors outside of the Bundle (Patient, Encounter, Practitioner, PractitionerRole, Organization, Location)"
Severity: #error
Expression: "entry.resource.descendants().reference.where($this.contains('?')).all(matches('^(Patient|Encounter|Practitioner|PractitionerRole|Organization|Location)\\\\?identifier='))"

Invariant: dr-bdl-13
Description: "One revision tag, the same on all entries"
Severity: #error
Expression: "entry.all(resource.meta.tag.where(system = 'https://dissection-records.example/fhir/CodeSystem/dr-revision').count() = 1) and entry.resource.meta.tag.where(system = 'https://dissection-records.example/fhir/CodeSystem/dr-revision').code.distinct().count() = 1"

Invariant: dr-bdl-14
Description: "Exactly one Provenance; it targets every other entry"
Severity: #error
Expression: "entry.resource.ofType(Provenance).count() = 1 and entry.where(resource.is(Provenance).not()).fullUrl.all($this in %resource.entry.resource.ofType(Provenance).target.reference)"

Invariant: dr-bdl-15
Description: "The entries do not exceed 100, the smallest limit known of a common server"
Severity: #warning
Expression: "entry.count() <= 100"

Invariant: dr-bdl-16
Description: "Exactly one lesion Condition: one case is one lesion"
Severity: #error
Expression: "entry.resource.ofType(Condition).where(meta.profile.where($this.endsWith('/dr-lesion')).exists()).count() = 1"
