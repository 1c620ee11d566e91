using Handspun.Jobs.Points;

namespace Handspun.Setups;

/// <summary>The sheets of all kinds of points that want to be told something.</summary>
internal static class SetupSheets
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ISetupSheet> All { get; } = [new RunoutSheet(), new BoreSheet(), new BodySheet(), new LiftSheet(), new CamCardSheet()];

    /// <summary>The sheet of a kind; null where nothing need be said.</summary>
    public static ISetupSheet? Find(PointKind kind) => All.FirstOrDefault(sheet => sheet.Kind == kind);
}
