using System.Globalization;

namespace Handspun.Metrology.Tests.Reference;

/// <summary>Published data that the tests check against; each file names its source.</summary>
internal static class ReferenceData
{
    /// <summary>Rows of numbers of a file in this folder, comment lines left out.</summary>
    public static double[][] Rows(string file) =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", file))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => Array.ConvertAll(line.Split(','), number => double.Parse(number, CultureInfo.InvariantCulture)))];
}
