using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Analysis;

/// <summary>Captures in plain CSV: comment lines first, then the columns <c>time_s,channel,value</c>.</summary>
/// <remarks>Channels: <c>reading</c>; <c>index</c>, a pulse; <c>mark</c>, the reference mark passes the pointer; <c>angle_deg</c>, an encoder.</remarks>
internal static class CsvCaptureFile
{
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
        using var rows = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture) { AllowComments = true, TrimOptions = TrimOptions.Trim, LineBreakInQuotedFieldIsBadData = true });
        long Line() => head + rows.RawRow;
        if (!Next(rows, Line))
        {
            throw new CaptureFileException("The file is empty: it must have the columns time_s,channel,value.");
        }

        if (!Columns.SequenceEqual(rows.Record!))
        {
            throw CaptureFileException.AtLine(Line(), $"the columns must be {string.Join(",", Columns)}, and they are {string.Join(",", rows.Record!)}.");
        }

        while (Next(rows, Line))
        {
            if (rows.Count != Columns.Length)
            {
                throw CaptureFileException.AtLine(Line(), $"a row has {Columns.Length} values, and this one has {rows.Count}.");
            }

            channels.Take(Number(rows[0], "time", Line()), rows[1], Number(rows[2], "value", Line()), Line());
        }
    }

    private static bool Next(CsvParser rows, Func<long> line)
    {
        try
        {
            return rows.Read();
        }
        catch (CsvHelperException)
        {
            throw CaptureFileException.AtLine(line(), "the row is not CSV: look at its quotes.");
        }
    }

    private static double Number(string text, string what, long line) =>
        !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? throw CaptureFileException.AtLine(line, $"the {what} '{text}' is no number.")
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
                new GaugeTraits
                {
                    Resolution = Length.FromMillimetres(preamble.ResolutionMillimetres),
                    ErrorLimit = Length.FromMillimetres(preamble.ErrorLimitMillimetres),
                })
            {
                Setting = preamble.Setting,
            };
    }
}
