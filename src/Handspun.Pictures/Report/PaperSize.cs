namespace Handspun.Pictures.Report;

/// <summary>A size of paper.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Width">Its width in points, 72 to the inch.</param>
/// <param name="Height">Its height in points.</param>
public sealed record PaperSize(string Name, float Width, float Height)
{
    private const float PointsPerMillimetre = 72 / 25.4f;

    /// <summary>210 mm by 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("a4", 210 * PointsPerMillimetre, 297 * PointsPerMillimetre);

    /// <summary>8½ in by 11 in.</summary>
    public static PaperSize Letter { get; } = new("letter", 612, 792);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PaperSize> All { get; } = [A4, Letter];

    /// <summary>The one of that name; null where there is none.</summary>
    public static PaperSize? Find(string name) => All.FirstOrDefault(paper => paper.Name == name);
}
