using System.Buffers;
using System.Text;
using System.Text.Json;
using CsCheck;
using Handspun.Gauges.Journal;

namespace Handspun.Gauges.Tests.Journal;

public sealed class JournalReaderTests : IDisposable
{
    private readonly TestFolder _folder = new();

    private string Path => _folder.File("journal.jsonl");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Header_WithEverything_ComesBackAsItWas()
    {
        var header = Journals.Header with { From = Journals.At(12.345678), Capture = "20260314-092653-abc123", Job = "2026-0014", Point = "pinion-runout" };
        JournalWriter.Create(Path, header).Dispose();

        using var reader = JournalReader.Open(Path);
        Assert.Equal(header, reader.Header);
        Assert.Empty(reader.Entries());
        Assert.False(reader.Torn);
    }

    [Fact]
    public void Entries_WithEveryByteValue_ComeBackAsTheyWere()
    {
        byte[] all = [.. Enumerable.Range(0, 256).Select(value => (byte)value)];
        using (var writer = JournalWriter.Create(Path, Journals.Header))
        {
            writer.AppendEvent(Journals.At(0.5), JournalEntry.LinkOpened);
            writer.Append(Journals.At(1.000001), new ReadOnlySequence<byte>(all));
            writer.AppendEvent(Journals.At(2), JournalEntry.CaptureEnded, "\"enough\"\n");
        }

        Assert.Equal(
            [
                Journals.Said(new JournalEntry.Event(Journals.At(0.5), "link-open", null)),
                Journals.Said(new JournalEntry.Chunk(Journals.At(1.000001), all)),
                Journals.Said(new JournalEntry.Event(Journals.At(2), "end", "\"enough\"\n")),
            ],
            Journals.Entries(Path).Select(Journals.Said));
    }

    // RFC 8259: each line is one JSON object, and UTF-8.
    [Fact]
    public void Lines_OfAJournal_AreJsonObjects_AndATextGaugeCanBeRead()
    {
        using (var writer = JournalWriter.Create(Path, Journals.Header))
        {
            writer.Append(1.5, "+0.0125 mm\r\n\u0085\u00e9\u007f");
        }

        var lines = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(Path)).Split('\n');
        Assert.Equal("", lines[^1]);
        Assert.All(lines[..^1], line => Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(line).RootElement.ValueKind));
        Assert.Contains("+0.0125 mm", lines[1], StringComparison.Ordinal);
        Assert.Equal(1.5, JsonDocument.Parse(lines[1]).RootElement.GetProperty("t").GetDouble());
    }

    [Fact]
    public void Times_OfWholeMicroseconds_ComeBackExactly() => Gen.Long[0, 400L * 24 * 3600 * 1_000_000].Array[1, 20].Sample(
        microseconds =>
        {
            File.Delete(Path);
            using (var writer = JournalWriter.Create(Path, Journals.Header))
            {
                Array.ForEach(microseconds, at => writer.AppendEvent(TimeSpan.FromMicroseconds(at), "x"));
            }

            Assert.Equal(microseconds, Journals.Entries(Path).Select(entry => entry.At.Ticks / 10));
        },
        iter: 50, threads: 1);

    [Fact]
    public void LastLine_TornAtEveryByte_IsPassedOver_AndAllBeforeItIsRead()
    {
        using (var writer = JournalWriter.Create(Path, Journals.Header))
        {
            writer.Append(1, "+0.1\r\n");
            writer.Append(2, "+0.2\r\n");
        }

        var before = new FileInfo(Path).Length;
        using (var writer = new FileStream(Path, FileMode.Append))
        {
            writer.Write("{\"t\":3.000000,\"raw\":\"é+0.3\\r\\n\"}\n"u8);
        }

        var whole = File.ReadAllBytes(Path);
        for (var length = (int)before; length <= whole.Length; length++)
        {
            File.WriteAllBytes(Path, whole[..length]);
            using var reader = JournalReader.Open(Path);
            var entries = reader.Entries().Count();
            var (nothing, all) = (length == before, length >= whole.Length - 1);   // only its line feed is missing: it says all it has to
            Assert.Equal(all ? 3 : 2, entries);
            Assert.Equal(!nothing && !all, reader.Torn);
        }
    }

    [Theory]
    [InlineData("{\"t\":2.0,\"ra", "not JSON")]
    [InlineData("[1,2]", "not a JSON object")]
    [InlineData("{\"raw\":\"+0.1\"}", "'t'")]
    [InlineData("{\"t\":\"2\",\"raw\":\"+0.1\"}", "'t'")]
    [InlineData("{\"t\":1e300,\"raw\":\"+0.1\"}", "'t'")]
    [InlineData("{\"t\":2.0}", "'event'")]
    [InlineData("{\"t\":2.0,\"raw\":\"\u20ac\"}", "no byte")]
    [InlineData("{\"t\":2.0,\"raw\":\"\\ud800\"}", "'raw'")]
    [InlineData("", "not JSON")]
    public void Line_InTheMiddleThatIsNoEntry_IsAnErrorWithItsNumber(string line, string why)
    {
        Write("{\"t\":1.000000,\"raw\":\"+0.1\\n\"}", line, "{\"t\":3.000000,\"raw\":\"+0.3\\n\"}");
        using var reader = JournalReader.Open(Path);

        var read = 0;
        var refused = Assert.Throws<JournalException>(() =>
        {
            foreach (var entry in reader.Entries())
            {
                read++;
            }
        });
        Assert.Equal(1, read);
        Assert.StartsWith("journal.jsonl, line 3: ", refused.Message, StringComparison.Ordinal);
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
        Assert.False(reader.Torn);
    }

    [Fact]
    public void Line_ThatIsStillBeingWritten_IsTorn_AndNoError()
    {
        JournalWriter.Create(Path, Journals.Header).Dispose();
        using var writer = new FileStream(Path, FileMode.Append, FileAccess.Write, FileShare.ReadWrite);
        writer.Write("{\"t\":1.000000,\"raw\":\"+0.1\\n\"}\n{\"t\":2.0000"u8);
        writer.Flush();
        using var reader = JournalReader.Open(Path);

        Assert.Single(reader.Entries());
        Assert.True(reader.Torn);
    }

    [Theory]
    [InlineData("{\"journal\":\"handspun\",\"version\":2}", "version 2")]
    [InlineData("{\"journal\":\"handspun\",\"version\":1.5}", "version 1.5")]
    [InlineData("{\"journal\":\"handspun\",\"version\":\"1\"}", "version 1")]
    [InlineData("{\"journal\":\"handspun\",\"version\":1}", "'gauge' is missing")]
    [InlineData("{\"journal\":\"other\",\"version\":1}", "not the first line of a journal")]
    [InlineData("time_s,channel,value", "not JSON")]
    [InlineData("", "not JSON")]
    public void File_ThatIsNoJournalOfThisVersion_IsRefusedAtItsFirstLine(string first, string why)
    {
        File.WriteAllText(Path, first + "\n");

        var refused = Assert.Throws<JournalException>(() => JournalReader.Open(Path));
        Assert.StartsWith("journal.jsonl, line 1: ", refused.Message, StringComparison.Ordinal);
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Journal_DamagedAnywhere_IsReadOrRefused_NeverMore()
    {
        using (var writer = JournalWriter.Create(Path, Journals.Header with { From = Journals.At(1) }))
        {
            writer.AppendEvent(Journals.At(0), JournalEntry.LinkOpened);
            writer.Append(1, "+0.1\r\n\u0000\u00ff");
            writer.AppendEvent(Journals.At(2), JournalEntry.CaptureEnded, "enough");
        }

        var whole = File.ReadAllBytes(Path);
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte).Array[1, 3].Sample(
            damages =>
            {
                var damaged = whole.ToArray();
                Array.ForEach(damages, damage => damaged[damage.Item1] = damage.Item2);
                File.WriteAllBytes(Path, damaged);
                try
                {
                    Assert.InRange(Journals.Entries(Path).Count, 0, 6);
                }
                catch (JournalException e)
                {
                    Assert.Contains("journal.jsonl, line ", e.Message, StringComparison.Ordinal);
                }
            },
            iter: 2000, threads: 1);
    }

    private void Write(params string[] lines)
    {
        JournalWriter.Create(Path, Journals.Header).Dispose();
        File.AppendAllLines(Path, lines);
    }
}
