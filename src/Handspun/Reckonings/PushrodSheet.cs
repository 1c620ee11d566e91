using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;

namespace Handspun.Reckonings;

/// <summary>How far to turn a pushrod's adjuster.</summary>
internal sealed class PushrodSheet : IReckoningSheet
{
    private const string Own = "another";

    /// <inheritdoc/>
    public string Code => "pushrods";

    /// <inheritdoc/>
    public string Title => "Turn a pushrod's adjuster";

    /// <inheritdoc/>
    public IReadOnlyList<ReckoningField> Fields(LengthUnit unit) =>
    [
        new("preload", "Wanted preload", "from the lifter's paper"),
        new(TypedReckoning.Known, "No play found to within ±", unit.IsInch ? "such as 0.005 in" : "such as 0.1 mm"),
        new("thread", "Adjuster's thread", "from the pushrods' paper") { Choices = [.. ThreadPitch.Unified.Select(thread => thread.Name), Own] },
        new("per_inch", "Threads per inch", $"only where the thread is {Own}"),
    ];

    /// <inheritdoc/>
    public Reckoning Work(TypedReckoning typed)
    {
        var preload = typed.Length("preload");
        var thread = ThreadPitch.Unified.FirstOrDefault(known => known.Name == typed.Text("thread"))
            ?? (typed.Number("per_inch") is { } perInch and >= 4 and <= 80 ? ThreadPitch.FromThreadsPerInch(perInch) : null);
        return preload is { } wanted
            ? PushrodAdjustment.FromNoPlay(wanted, thread)
            : PushrodAdjustment.FromNoPlay(default, thread) with { Missing = "The wanted preload is missing: take it from the lifter's paper, with its unit." };
    }
}
