Invariant: dr-prv-1
Description: "Provenance has an author, an assembler and the source submission"
Severity: #error
Expression: "entry.resource.ofType(Provenance).all(agent.where(type.coding.where(code = 'author').exists()).exists() and agent.where(type.coding.where(code = 'assembler').exists()).exists() and entity.where(role = 'source' and what.identifier.value.exists()).exists())"

Invariant: dr-prv-2
Description: "Provenance is recorded not before the Procedure ended"
Severity: #error
Expression: "entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.empty() or entry.resource.ofType(Provenance).all(recorded >= %resource.entry.resource.ofType(Procedure).where(meta.profile.where($this.endsWith('/dr-esd-procedure')).exists()).performed.ofType(Period).end)"
