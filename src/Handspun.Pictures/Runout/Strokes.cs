using Handspun.Metrology.Runout;
using Handspun.Pictures.Page;
using ScottPlot;
using SkiaSharp;

namespace Handspun.Pictures.Runout;

/// <summary>Lines and markers of the runout picture. Each differs in shape, not only in colour.</summary>
internal static class Strokes
{
    private static readonly (MarkerShape Shape, SKColor Colour)[] TurnStyles =
    [
        (MarkerShape.OpenCircle, new(0x4A, 0x78, 0x96)),
        (MarkerShape.OpenSquare, new(0xA6, 0x6A, 0x1F)),
        (MarkerShape.OpenTriangleUp, new(0x4F, 0x7D, 0x54)),
        (MarkerShape.OpenDiamond, new(0x86, 0x5A, 0x8C)),
        (MarkerShape.Cross, new(0x5E, 0x62, 0x66)),
        (MarkerShape.OpenTriangleDown, new(0xA0, 0x52, 0x5C)),
    ];

    public static int TurnKinds => TurnStyles.Length;

    public static LineStyle Profile => new(2.2f, Ink.Plot(Ink.Profile)) { Rounded = true };

    public static Dash Limit { get; } = new(Ink.Limit, 1.6f, 7, 4);

    public static Dash Extension { get; } = new(Ink.Text, 1, 2, 4);

    public static Dash TurnEdge { get; } = new(Ink.Frame, 1, 3, 4);

    public static LineStyle ReadingsLine => new(1.2f, Ink.Plot(Ink.Readings));

    public static MarkerStyle Reading => Filled(MarkerShape.FilledCircle, 3.6f, Ink.Readings);

    public static MarkerStyle HighSpot => Filled(MarkerShape.FilledTriangleDown, 11, Ink.Text);

    public static MarkerStyle LowSpot => Outlined(MarkerShape.OpenTriangleUp, 10, Ink.Text, 1.6f);

    public static MarkerStyle LeftOut(RejectionReason reason) => reason switch
    {
        RejectionReason.Knock => Outlined(MarkerShape.Eks, 8, Ink.LeftOut, 1.8f),
        RejectionReason.LocalFault => Outlined(MarkerShape.OpenDiamond, 7, Ink.LeftOut, 1.4f),
        RejectionReason.Stuck => Outlined(MarkerShape.Cross, 6, Ink.Readings, 1),
        _ => Outlined(MarkerShape.OpenSquare, 3.6f, Ink.Readings, 0.8f),
    };

    public static MarkerStyle OffScale(bool above) =>
        Filled(above ? MarkerShape.FilledTriangleUp : MarkerShape.FilledTriangleDown, 9, Ink.LeftOut);

    public static MarkerStyle Turn(int kind)
    {
        var (shape, colour) = TurnStyles[kind % TurnStyles.Length];
        return Outlined(shape, shape == MarkerShape.Cross ? 6 : 5, colour, 1.1f);
    }

    public static LineStyle TurnLine(int kind) => new(0.9f, Ink.Plot(TurnStyles[kind % TurnStyles.Length].Colour));

    private static MarkerStyle Filled(MarkerShape shape, float size, SKColor colour) => new(shape, size, Ink.Plot(colour))
    {
        LineWidth = 0,
        OutlineStyle = LineStyle.None,
    };

    private static MarkerStyle Outlined(MarkerShape shape, float size, SKColor colour, float width) => new(shape, size, Ink.Plot(colour))
    {
        LineWidth = width,
        LineColor = Ink.Plot(colour),
        OutlineColor = Ink.Plot(colour),
        OutlineWidth = width,
    };
}
