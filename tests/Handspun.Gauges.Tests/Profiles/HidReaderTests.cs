using Handspun.Gauges.Hid;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Profiles;

public class HidReaderTests
{
    [Fact]
    public void Profile_WithoutTheSection_IsOfNoHidGauge() => Assert.Null(ProfileReader.Read("mine", "").Hid);

    [Fact]
    public void Report_ByUsage_IsRead()
    {
        var profile = ProfileReader.Read("mine", """
            [hid]
            kind = "report"
            usage_page = 0xFF00
            usage = 0x02
            report_id = 3
            counts = true
            [value]
            scale = 0.0005
            [flags]
            battery_low = 2
            index = 1
            [index]
            source = "hid-button"
            """);

        var format = Assert.IsType<HidReportFormat>(profile.Hid);
        Assert.Equal((new HidUsage(0xFF00, 2), (byte)3, true, null, true), (format.Usage!.Value, format.ReportId, format.InCounts, format.Place, format.TellsIndex));
        Assert.Equal([new(2, GaugeFlags.BatteryLow, false), new HidFlag(1, GaugeFlags.None, true)], format.Flags);
        Assert.Same(profile.Hid, profile.Link.Hid);
    }

    [Fact]
    public void Report_ByPlace_IsRead()
    {
        var profile = ProfileReader.Read("mine", "[hid]\nkind = \"report\"\nbit_offset = 0\nbit_width = 24\nsigned = true\n[flags]\nhold = 0");

        var format = Assert.IsType<HidReportFormat>(profile.Hid);
        Assert.Equal((new FieldPlace(0, 0, 24, true), null, false), (format.Place!.Value, format.Usage, format.TellsIndex));
        Assert.Equal(new HidFlag(0, GaugeFlags.Hold, false), Assert.Single(format.Flags));
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("decimal = \"point\"", false)]
    [InlineData("decimal = \"comma\"", true)]
    public void Keyboard_WithItsDecimalSign_IsRead(string line, bool comma) =>
        Assert.Equal(new HidKeyboardFormat { DecimalComma = comma }, ProfileReader.Read("mine", "[hid]\nkind = \"keyboard\"\n" + line).Hid);

    [Theory]
    [InlineData("[hid]\ndecimal = \"point\"", "'hid.kind'", "\"report\"")]
    [InlineData("[hid]\nkind = \"mouse\"", "'hid.kind'", "report, keyboard")]
    [InlineData("[hid]\nkind = \"keyboard\"\ndecimal = \"dot\"", "'hid.decimal'", "point, comma")]
    [InlineData("[hid]\nkind = \"keyboard\"\nusage = 1", "'hid.usage'", "decimal, kind")]
    [InlineData("[hid]\nkind = \"report\"", "'hid.usage'", "usage_page and usage, or bit_offset and bit_width")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1", "'hid.usage'", "usage_page and usage")]
    [InlineData("[hid]\nkind = \"report\"\nbit_offset = 1", "'hid.bit_offset'", "bit_offset and bit_width")]
    [InlineData("[hid]\nkind = \"report\"\nbit_offset = 1\nbit_width = 8\nusage = 1\nusage_page = 1", "'hid.bit_offset'", "one of two ways")]
    [InlineData("[hid]\nkind = \"report\"\nbit_offset = 1\nbit_width = 33", "'hid.bit_width'", "from 1 to 32")]
    [InlineData("[hid]\nkind = \"report\"\nbit_offset = 1\nbit_width = 8\nreport_id = 0", "'hid.report_id'", "from 1 to 255")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1\nusage_page = 0x10000", "'hid.usage_page'", "from 0 to 65535")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1\nusage_page = 1\nsigned = true", "'hid.signed'", "leave it out")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1\nusage_page = 1\n[flags]\nindex = 0", "'flags.index'", "from 1 to")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1\nusage_page = 1\n[flags]\nindex = \"Z\"", "'flags.index'", "whole number")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1\nusage_page = 1\n[frame]\nkind = \"text-line\"", "'frame'", "leave it out")]
    [InlineData("[hid]\nkind = \"report\"\nusage = 1\nusage_page = 1\n[index]\nsource = \"hid-button\"", "'index.source'", "[flags]")]
    [InlineData("[index]\nsource = \"hid-button\"", "'index.source'", "[hid]")]
    [InlineData("[hid]\nkind = \"keyboard\"\n[frame]\nkind = \"bits\"\nlength = 3\noffset = 0\nwidth = 8", "'frame.kind'", "keys type text")]
    public void Profile_WithAWrongKeyOrValue_NamesTheKeyAndWhatIsAllowed(string toml, string key, string allowed)
    {
        var problems = Assert.Throws<ProfileException>(() => ProfileReader.Read("mine", toml)).Problems;

        Assert.Contains(problems, problem => problem.Contains(key, StringComparison.Ordinal) && problem.Contains(allowed, StringComparison.Ordinal));
        Assert.All(problems, problem => Assert.EndsWith(".", problem, StringComparison.Ordinal));
    }
}
