using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Handspun.Capture.Methods.Runout;
using Handspun.Metrology.Runout;

namespace Handspun.Analysis;

/// <summary>Captures in plain CSV: comment lines first, then the columns <c>time_s,channel,value</c>.</summary>
/// <remarks>Channels: <c>reading</c>; <c>index</c>, a pulse; <c>mark</c>, the reference mark passes the pointer; <c>angle_deg</c>, an encoder.</remarks>
internal static class CsvCaptureFile
{
    /// <summary>Rows that a file may have: a hand turns a shaft for a minute, a fast gauge fills this in an hour or more.</summary>
    public const int MostRows = 4_000_000;

    private const int LongestValue = 1000;
    private static readonly string[] Columns = ["time_s", "channel", "value"];

    /// <summary>Reads one.</summary>
    /// <exception cref="CaptureFileException">Something is wrong; says at which line.</exception>
    public static CaptureFile Read(string path)
    {
        using var text = new StreamReader(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true));
        try
        {
            var preamble = new CsvPreamble();
            var head = ReadPreamble(text, preamble);
            var channels = new Channels(preamble);
            ReadRows(text, head, channels);
            return channels.ToFile();
        }
        catch (DecoderFallbackException)
        {
            throw new CaptureFileException("The file is not text in UTF-8.");
        }
    }

    private static long ReadPreamble(StreamReader text, CsvPreamble preamble)
    {
        var line = 0L;
        while (text.Peek() is '#' or '\r' or '\n')
        {
            line++;
            if (text.ReadLine() is { Length: > 0 } comment)
            {
                preamble.Take(comment, line);
            }
        }

        return line;
    }

    private static void ReadRows(StreamReader text, long head, Channels channels)
    {
        // Comments are not left to the parser: a key among the rows must not be passed over.
        using var rows = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture) { AllowComments = false, TrimOptions = TrimOptions.Trim, LineBreakInQuotedFieldIsBadData = true, MaxFieldSize = LongestValue });
        try
        {
            ReadRows(rows, head, channels);
        }
        catch (CsvHelperException)   // a row is taken apart only when its values are asked for
        {
            throw CaptureFileException.AtLine(head + rows.RawRow, "the row is not CSV: look at its quotes and its length.");
        }
    }

    private static void ReadRows(CsvParser rows, long head, Channels channels)
    {
        long Line() => head + rows.RawRow;
        if (!rows.Read())
        {
            throw new CaptureFileException("The file is empty: it must have the columns time_s,channel,value.");
        }

        if (!Columns.SequenceEqual(rows.Record!))
        {
            throw CaptureFileException.AtLine(Line(), $"the columns must be {string.Join(",", Columns)}, and they are {string.Join(",", rows.Record!)}.");
        }

        var count = 0;
        while (rows.Read())
        {
            if (rows[0].StartsWith('#'))
            {
                CsvPreamble.TakeAmongRows(string.Join(",", rows.Record!), Line());
                continue;
            }

            if (++count > MostRows)
            {
                throw CaptureFileException.AtLine(Line(), string.Create(CultureInfo.InvariantCulture, $"there are more than {MostRows} rows, far more than a hand turns a shaft for: cut the capture out of the file."));
            }

            TakeRow(rows, Line(), channels);
        }
    }

    private static void TakeRow(CsvParser row, long line, Channels channels)
    {
        if (row[0] == Columns[0])
        {
            throw CaptureFileException.AtLine(line, "the columns stand here again: two captures in one file must be cut apart.");
        }

        if (row.Count != Columns.Length)
        {
            throw CaptureFileException.AtLine(line, $"a row has {Columns.Length} values, and this one has {row.Count}: the decimal sign is a point.");
        }

        channels.Take(Number(row[0], "time", line), row[1], Number(row[2], "value", line), line);
    }

    private static double Number(string text, string what, long line) =>
        !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? throw CaptureFileException.AtLine(line, $"the {what} '{text}' is no number{(char.IsAsciiDigit(text.FirstOrDefault(char.IsLetterOrDigit)) ? ": the unit stands once, at the head" : "")}.")
        : double.IsFinite(number) ? number
        : throw CaptureFileException.AtLine(line, $"the {what} '{text}' is not finite.");

    /// <summary>What the rows hold, channel by channel.</summary>
    private sealed class Channels(CsvPreamble preamble)
    {
        private readonly List<double> _seconds = [];
        private readonly List<double> _millimetres = [];
        private readonly List<double> _index = [];
        private readonly List<double> _marks = [];
        private readonly List<double> _encoderSeconds = [];
        private readonly List<double> _encoderDegrees = [];
        private readonly Dictionary<string, double> _newest = [];

        public void Take(double seconds, string channel, double value, long line)
        {
            // Each channel keeps its own time in order; two channels may have been written one after the other.
            if (_newest.TryGetValue(channel, out var newest) && seconds < newest)
            {
                throw CaptureFileException.AtLine(line, $"the time of '{channel}' runs backwards, from {newest.ToString(CultureInfo.InvariantCulture)} to {seconds.ToString(CultureInfo.InvariantCulture)} s.");
            }

            _newest[channel] = seconds;
            switch (channel)
            {
                case "reading":
                    _seconds.Add(seconds);
                    _millimetres.Add(value * preamble.MillimetresPerUnit);
                    break;
                case "index":
                    _index.Add(seconds);
                    break;
                case "mark":
                    _marks.Add(seconds);
                    break;
                case "angle_deg":
                    _encoderSeconds.Add(seconds);
                    _encoderDegrees.Add(value);
                    break;
                default:
                    throw CaptureFileException.AtLine(line, $"there is no channel '{channel}': known are reading, index, mark, angle_deg.");
            }
        }

        public CaptureFile ToFile() => _seconds.Count == 0
            ? throw new CaptureFileException("The file holds no reading.")
            : new(
                preamble.Point,
                IndicatorStand.Readings(
                    new RotationCapture
                    {
                        Seconds = _seconds.ToArray(),
                        Millimetres = _millimetres.ToArray(),
                        IndexSeconds = _index.ToArray(),
                        TurnsPerIndex = preamble.IndexTurns,
                        MarkSeconds = _marks.ToArray(),
                        EncoderSeconds = _encoderSeconds.ToArray(),
                        EncoderDegrees = _encoderDegrees.ToArray(),
                    },
                    preamble.Stand),
                preamble.Gauge)
            {
                Setup = preamble.Setup,
                Lift = preamble.Lift,
            };
    }
}
