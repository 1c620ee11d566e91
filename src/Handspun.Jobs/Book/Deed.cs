using System.Text.Json.Serialization;

namespace Handspun.Jobs.Book;

/// <summary>What somebody did in a job by hand, as it is kept.</summary>
/// <remarks>Kept as JSON with its kind. A new kind adds a type of its own and a line here.</remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "deed")]
[JsonDerivedType(typeof(Ticked), "ticked")]
[JsonDerivedType(typeof(Unticked), "unticked")]
[JsonDerivedType(typeof(Skipped), "skipped")]
[JsonDerivedType(typeof(TakenUpAgain), "taken-up-again")]
[JsonDerivedType(typeof(GateDecided), "gate-decided")]
[JsonDerivedType(typeof(FindingNoted), "finding-noted")]
[JsonDerivedType(typeof(PhotoAdded), "photo-added")]
[JsonDerivedType(typeof(PartAdded), "part-added")]
[JsonDerivedType(typeof(PartFaced), "part-faced")]
[JsonDerivedType(typeof(PartDecided), "part-decided")]
[JsonDerivedType(typeof(LimitSet), "limit-set")]
[JsonDerivedType(typeof(JobClosed), "job-closed")]
[JsonDerivedType(typeof(JobReopened), "job-reopened")]
public abstract record Deed;
