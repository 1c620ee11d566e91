using Handspun.Metrology.Tests.Reference;

namespace Handspun.Metrology.Tests.GaugeStudy;

/// <summary>Published studies as tables by mechanic, part and trial.</summary>
internal static class StudyTables
{
    public static double[,,] Of(string file)
    {
        var rows = ReferenceData.Rows(file);
        int Size(int column) => (int)rows.Max(row => row[column]);
        var table = new double[Size(0), Size(1), Size(2)];
        foreach (var row in rows)
        {
            table[(int)row[0] - 1, (int)row[1] - 1, (int)row[2] - 1] = row[3];
        }

        return table;
    }

    /// <summary>One-way data as one mechanic who measures each treatment as a part.</summary>
    public static double[,,] OneWay(string file)
    {
        var rows = ReferenceData.Rows(file);
        var table = new double[1, (int)rows.Max(row => row[0]), (int)rows.Max(row => row[2])];
        foreach (var row in rows)
        {
            table[0, (int)row[0] - 1, (int)row[2] - 1] = row[3];
        }

        return table;
    }
}
