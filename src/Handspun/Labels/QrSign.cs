using System.Collections;
using System.Globalization;
using System.Text;
using QRCoder;

namespace Handspun.Labels;

/// <summary>A QR code (ISO/IEC 18004) as a drawing that prints sharp at any size.</summary>
internal static class QrSign
{
    /// <summary>The code of a text, with the quiet zone around it and as much room for grease as 25 % of its words.</summary>
    /// <returns>The drawing's side in modules, and the path of its dark ones.</returns>
    public static (int Side, string Path) Of(string text)
    {
        var modules = ModulesOf(text);
        var path = new StringBuilder();
        for (var row = 0; row < modules.Count; row++)
        {
            for (var column = 0; column < modules[row].Count; column++)
            {
                if (modules[row][column])
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{column} {row}h1v1h-1z");
                }
            }
        }

        return (modules.Count, path.ToString());
    }

    /// <summary>The same in the letters of a terminal: two rows of modules to a line, black on white whatever the terminal's own colours are.</summary>
    public static string Terminal(string text)
    {
        const string BlackOnWhite = "\u001b[30;107m";
        const string AsBefore = "\u001b[0m";
        var modules = ModulesOf(text);
        var lines = new StringBuilder();
        for (var row = 0; row < modules.Count; row += 2)
        {
            lines.Append(BlackOnWhite);
            for (var column = 0; column < modules[row].Count; column++)
            {
                lines.Append((modules[row][column], row + 1 < modules.Count && modules[row + 1][column]) switch
                {
                    (true, true) => '█',
                    (true, false) => '▀',
                    (false, true) => '▄',
                    _ => ' ',
                });
            }

            lines.Append(AsBefore).Append('\n');
        }

        return lines.ToString();
    }

    /// <summary>The same as a file.</summary>
    public static string Svg(string text)
    {
        var (side, path) = Of(text);
        return string.Create(CultureInfo.InvariantCulture, $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h{side}v{side}H0z"/><path d="{path}"/></svg>""");
    }

    // Row by row, true where dark, with the quiet zone of four modules that ISO/IEC 18004, 9.1 asks for.
    private static IReadOnlyList<BitArray> ModulesOf(string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.Q);
        return [.. code.ModuleMatrix];
    }
}
