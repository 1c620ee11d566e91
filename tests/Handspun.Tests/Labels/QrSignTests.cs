using System.Globalization;
using System.Text.RegularExpressions;
using Handspun.Labels;
using ZXing;
using ZXing.Common;

namespace Handspun.Tests.Labels;

/// <summary>Codes are read back by a decoder that had no part in making them.</summary>
public sealed partial class QrSignTests
{
    private const int Scale = 6;

    [Theory]
    [InlineData("http://127.0.0.1:5080/jobs/2026-0014/parts/lifter-front-intake")]
    [InlineData("http://shop-station:5080/jobs/2026-10000/parts/cam-bearing-rear")]
    [InlineData("x")]
    public void Code_IsReadBack(string text) => Assert.Equal(text, Read(QrSign.Svg(text), spoiled: 0));

    [Fact]
    public void Code_InTheLettersOfATerminal_IsReadBack()
    {
        const string Address = "http://192.0.2.20:5080/pair/ABCD2345";
        var lines = QrSign.Terminal(Address).TrimEnd('\n').Split('\n').Select(line => line.Replace("\u001b[30;107m", "", StringComparison.Ordinal).Replace("\u001b[0m", "", StringComparison.Ordinal)).ToList();
        var side = lines[0].Length;
        var grey = White(side);
        for (var row = 0; row < side; row++)
        {
            for (var column = 0; column < side; column++)
            {
                if (lines[row / 2][column] == '█' || lines[row / 2][column] == (row % 2 == 0 ? '▀' : '▄'))
                {
                    Paint(grey, side, column, row, 1);
                }
            }
        }

        Assert.All(lines, line => Assert.Equal(side, line.Length));
        Assert.Equal(Address, Decode(grey, side));
    }

    // ISO/IEC 18004, 6.5: level Q restores about a quarter of the code words. A thumb of grease in the middle covers fewer.
    [Fact]
    public void Code_WithAGreasyThumbOnIt_IsReadBack()
    {
        const string Address = "http://127.0.0.1:5080/jobs/2026-0014/parts/pump-rotors-return";

        Assert.Equal(Address, Read(QrSign.Svg(Address), spoiled: 7));
    }

    private static string? Read(string svg, int spoiled)
    {
        var side = int.Parse(Side().Match(svg).Groups[1].Value, CultureInfo.InvariantCulture);
        var grey = White(side);
        foreach (Match module in Module().Matches(svg))
        {
            Paint(grey, side, int.Parse(module.Groups[1].Value, CultureInfo.InvariantCulture), int.Parse(module.Groups[2].Value, CultureInfo.InvariantCulture), 1);
        }

        if (spoiled > 0)
        {
            Paint(grey, side, (side - spoiled) / 2, (side - spoiled) / 2, spoiled);
        }

        return Decode(grey, side);
    }

    private static byte[] White(int side)
    {
        var grey = new byte[side * Scale * side * Scale];
        Array.Fill(grey, byte.MaxValue);
        return grey;
    }

    private static string? Decode(byte[] grey, int side)
    {
        var image = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(grey, side * Scale, side * Scale, RGBLuminanceSource.BitmapFormat.Gray8)));
        return new ZXing.QrCode.QRCodeReader().decode(image)?.Text;
    }

    private static void Paint(byte[] grey, int side, int column, int row, int modules)
    {
        for (var y = row * Scale; y < (row + modules) * Scale; y++)
        {
            Array.Fill(grey, (byte)0, y * side * Scale + column * Scale, modules * Scale);
        }
    }

    [GeneratedRegex("viewBox=\"0 0 (\\d+) ")]
    private static partial Regex Side();

    [GeneratedRegex("M(\\d+) (\\d+)h1v1h-1z")]
    private static partial Regex Module();
}
