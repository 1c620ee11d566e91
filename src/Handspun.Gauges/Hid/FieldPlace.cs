using Handspun.Gauges.Decoding.Binary;

namespace Handspun.Gauges.Hid;

/// <summary>Where a value lies in the bytes of a report, as they are read from the device.</summary>
/// <param name="ReportId">The report's number, which is its first byte; 0 where reports have none.</param>
/// <param name="BitOffset">The value's first bit after that number; bit 0 is the lowest of the first byte.</param>
/// <param name="BitSize">Its bits, 1 to 32.</param>
/// <param name="IsSigned">Whether it is two's complement.</param>
public readonly record struct FieldPlace(byte ReportId, int BitOffset, int BitSize, bool IsSigned)
{
    /// <summary>The place of one value of a field.</summary>
    /// <param name="field">The field.</param>
    /// <param name="slot">Which of its values, from 0.</param>
    public static FieldPlace Of(ReportField field, int slot = 0) =>
        new(field.ReportId, field.BitOffset + slot * field.BitSize, field.BitSize, field.IsSigned);

    /// <summary>Reads the value.</summary>
    /// <returns>False where the report is another one, or too short.</returns>
    public bool TryRead(ReadOnlySpan<byte> report, out long counts)
    {
        counts = 0;
        if (ReportId != 0)
        {
            if (report.IsEmpty || report[0] != ReportId)
            {
                return false;
            }

            report = report[1..];
        }

        if (BitOffset + BitSize > 8L * report.Length)
        {
            return false;
        }

        var raw = Bits.Field(report, BitOffset, BitSize, BitOrder.LowFirst);
        counts = IsSigned ? Bits.Signed(raw, BitSize) : raw;
        return true;
    }
}
