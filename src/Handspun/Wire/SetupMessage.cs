using System.Text.Json;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Setups;

namespace Handspun.Wire;

/// <summary>What is said of a point before it is measured, and what can be typed of it.</summary>
/// <param name="Point">The point.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Sentence">What stands there, in words; null where nothing need be said.</param>
/// <param name="Setup">The same as keys of its kind; null where nothing was said.</param>
/// <param name="Typed">What to send to change it, by key, as it stands now.</param>
internal sealed record SetupMessage(string Point, string Kind, string? Sentence, Dictionary<string, JsonElement>? Setup, IReadOnlyDictionary<string, string> Typed)
{
    public static SetupMessage Of(JobPoint point, LengthUnit unit)
    {
        var sheet = SetupSheets.Find(point.Kind);
        return new(
            point.Code,
            PointKindCodes.Of(point.Kind),
            sheet?.Tell(point.Setup, unit),
            KeysOf(point.Setup),
            sheet?.Fields(point.Setup, unit).ToDictionary(field => field.Name, field => field.Value) ?? []);
    }

    /// <summary>A setup as keys of its kind; null where nothing was said.</summary>
    public static Dictionary<string, JsonElement>? KeysOf(PointSetup? setup) => setup is null ? null : FlatFigures.Of(setup);
}

/// <summary>One thing to type or to choose before a capture.</summary>
internal sealed record SetupFieldMessage(string Name, string Label, string Value, IReadOnlyList<SetupChoiceMessage>? Choices)
{
    public static SetupFieldMessage Of(SetupField field) =>
        new(field.Name, field.Label, field.Value, field.Choices?.Select(choice => new SetupChoiceMessage(choice.Code, choice.Words)).ToList());
}

/// <summary>One of several to choose from.</summary>
internal sealed record SetupChoiceMessage(string Code, string Words);
