using System.Text.Json.Serialization;

namespace Handspun.Jobs.Points;

/// <summary>What is said of a point before it is measured, as its kind needs it: where the indicator stands, which ring a bore gauge was set in.</summary>
/// <remarks>Kept as JSON with its kind. A new kind adds a type of its own and a line here.</remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(RunoutSetup), "runout")]
[JsonDerivedType(typeof(BoreSetup), "bore")]
[JsonDerivedType(typeof(BodySetup), "outside-size")]
[JsonDerivedType(typeof(LiftSetup), "lift-curve")]
[JsonDerivedType(typeof(CamCardSetup), "cam-timing")]
public abstract record PointSetup
{
    /// <summary>The kind of point that it is for.</summary>
    [JsonIgnore]
    public abstract PointKind Kind { get; }

    /// <summary>All that cannot be, one sentence each, and what to do; empty where it can be used.</summary>
    public abstract IEnumerable<string> Problems();
}
