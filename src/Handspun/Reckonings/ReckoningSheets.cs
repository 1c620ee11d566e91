using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;

namespace Handspun.Reckonings;

/// <summary>All reckonings.</summary>
internal static class ReckoningSheets
{
    /// <summary>All of them, in the order to be shown.</summary>
    public static IReadOnlyList<IReckoningSheet> All { get; } = [new PushrodSheet(), new SpringRoomSheet(), new SealRoomSheet(), new GearLashSheet()];

    /// <summary>The sheet of that name; null where there is none.</summary>
    public static IReckoningSheet? Find(string? code) => All.FirstOrDefault(sheet => sheet.Code == code);

    /// <summary>Works a sheet out; what cannot be read is said first.</summary>
    public static Reckoning Work(IReckoningSheet sheet, IReadOnlyDictionary<string, string?> typed, LengthUnit unit)
    {
        var read = new TypedReckoning(typed, unit);
        var answer = sheet.Work(read);
        return read.Problem is { } problem ? answer with { Lines = [], Missing = problem } : answer;
    }

    /// <summary>The unit in which lengths stand in a worked formula.</summary>
    public static ShownUnit Shown(LengthUnit unit) => unit.IsInch ? ShownUnit.Inches : ShownUnit.Millimetres;
}
