using System.Buffers;

namespace Handspun.Gauges.Journal;

/// <summary>A line of a journal after the first: bytes that came in, or something that happened to the link.</summary>
/// <param name="At">When, on the gauge clock.</param>
public abstract record JournalEntry(TimeSpan At)
{
    /// <summary>The port was opened.</summary>
    public const string LinkOpened = "link-open";

    /// <summary>The port was lost.</summary>
    public const string LinkLost = "link-lost";

    /// <summary>The mechanic said that the reference mark passes the pointer.</summary>
    public const string Mark = "mark";

    /// <summary>An index pulse that came beside the bytes, as it came, with the bouncing of its contact; the detail says from where.</summary>
    public const string Index = "index";

    /// <summary>The gauge changed the unit that it names; the detail is <c>mm</c> or <c>in</c>. For the reader: a replay finds it again in the bytes.</summary>
    public const string UnitSwitched = "unit";

    /// <summary>What a HID gauge says of its reports, in hexadecimal digits; holds until the port is opened again.</summary>
    public const string ReportDescriptor = "report-descriptor";

    /// <summary>The capture ended here; the detail says why.</summary>
    public const string CaptureEnded = "end";

    /// <summary>Bytes as they came in.</summary>
    /// <param name="At">When they arrived.</param>
    /// <param name="Bytes">The bytes.</param>
    public sealed record Chunk(TimeSpan At, ReadOnlyMemory<byte> Bytes) : JournalEntry(At);

    /// <summary>Something that happened.</summary>
    /// <param name="At">When.</param>
    /// <param name="Name">One of the names above.</param>
    /// <param name="Detail">More, where there is more.</param>
    public sealed record Event(TimeSpan At, string Name, string? Detail) : JournalEntry(At)
    {
        /// <summary>Takes what a HID gauge says of its reports.</summary>
        /// <param name="descriptor">The report descriptor; empty where the detail is no such thing.</param>
        /// <returns>False where something else happened.</returns>
        public bool IsDescription(out ReadOnlyMemory<byte> descriptor)
        {
            descriptor = default;
            if (Name != ReportDescriptor)
            {
                return false;
            }

            var digits = Detail ?? "";
            var bytes = new byte[digits.Length / 2];
            descriptor = Convert.FromHexString(digits, bytes, out _, out _) == OperationStatus.Done ? bytes : default;
            return true;
        }
    }
}
