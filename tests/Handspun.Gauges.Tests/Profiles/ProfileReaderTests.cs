using System.IO.Ports;
using CsCheck;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Profiles;

public class ProfileReaderTests
{
    [Fact]
    public void Profile_ThatSaysEverything_IsReadAsItSays()
    {
        const string toml = """
            title = "One line a value"
            [link]
            baud = 4800
            data_bits = 7
            parity = "even"
            stop_bits = 2
            dtr = true
            rts = false
            [frame]
            kind = "text-line"
            longest = 20
            [value]
            unit = "in"
            inverted = true
            scale = 0.5
            travel_mm = 12.5
            resolution_mm = 0.0005
            error_limit_mm = 1
            """;
        var profile = ProfileReader.Read("mine", toml);

        Assert.Equal(("mine", "One line a value", toml), (profile.Name, profile.Title, profile.Text));
        Assert.Equal((4800, 7, Parity.Even, StopBits.Two), (profile.Link.Baud, profile.Link.DataBits, profile.Link.Parity, profile.Link.StopBits));
        Assert.Equal((true, false), (profile.Link.DataTerminalReady, profile.Link.RequestToSend));
        Assert.Equal(20, Assert.IsType<TextLineFormat>(profile.Frame).Cut.Longest);
        Assert.Equal(new ValueFormat { Unit = GaugeUnit.Inch, Inverted = true, Scale = 0.5, TravelMillimetres = 12.5 }, profile.Value);
        Assert.Equal((0.0005, 1.0), (profile.Accuracy.ResolutionMillimetres, profile.Accuracy.ErrorLimitMillimetres));
    }

    [Fact]
    public void Profile_ThatSaysNothing_IsAPlainOne()
    {
        var profile = ProfileReader.Read("plain", "");

        Assert.Equal("plain", profile.Title);
        Assert.Equal((9600, 8, Parity.None, StopBits.One), (profile.Link.Baud, profile.Link.DataBits, profile.Link.Parity, profile.Link.StopBits));
        Assert.Null(profile.Link.DataTerminalReady);
        Assert.Equal(new FrameCut(), Assert.IsType<TextLineFormat>(profile.Frame).Cut);
        Assert.Equal(new ValueFormat(), profile.Value);
        Assert.Equal(0, profile.Accuracy.ResolutionMillimetres);
    }

    [Fact]
    public void Clock_OfTheGaugesOwn_IsReadWhereItIsStated()
    {
        Assert.Equal(TimeSpan.FromMilliseconds(12.5), ProfileReader.Read("mine", "[clock]\nevery_ms = 12.5").SendsEvery);
        Assert.Null(ProfileReader.Read("mine", "").SendsEvery);
    }

    [Theory]
    [InlineData("stop_bits = 1.5", StopBits.OnePointFive)]
    [InlineData("stop_bits = \"2\"", StopBits.Two)]
    public void StopBits_AsNumberOrText_AreRead(string line, StopBits stopBits) =>
        Assert.Equal(stopBits, ProfileReader.Read("mine", "[link]\n" + line).Link.StopBits);

    [Theory]
    [InlineData("[link]\nbaud = 20", "'link.baud'", "from 110 to 4000000")]
    [InlineData("[link]\nbaud = \"fast\"", "'link.baud'", "whole number")]
    [InlineData("[link]\nbaud = 9600.5", "'link.baud'", "whole number")]
    [InlineData("[link]\ndata_bits = 9", "'link.data_bits'", "from 5 to 8")]
    [InlineData("[link]\nparity = \"some\"", "'link.parity'", "none, even, odd, mark, space")]
    [InlineData("[link]\nstop_bits = 3", "'link.stop_bits'", "1, 1.5, 2")]
    [InlineData("[link]\nhandshake = \"some\"", "'link.handshake'", "none, rts-cts, xon-xoff, both")]
    [InlineData("[link]\nhandshake = \"rts-cts\"\nrts = true", "'link.rts'", "leave it out")]
    [InlineData("[link]\ndtr = \"on\"", "'link.dtr'", "true or false")]
    [InlineData("[frame]\nkind = \"guess\"", "'frame.kind'", "text-line")]
    [InlineData("[value]\nunit = \"cm\"", "'value.unit'", "mm, in")]
    [InlineData("[frame]\nlongest = 4", "'frame.longest'", "from 8 to 256")]
    [InlineData("[frame]\nlongest = 257", "'frame.longest'", "from 8 to 256")]
    [InlineData("[value]\nresolution_mm = -1", "'value.resolution_mm'", "from 0 to 1")]
    [InlineData("[value]\nerror_limit_mm = nan", "'value.error_limit_mm'", "from 0 to 10")]
    [InlineData("title = 5", "'title'", "text in quotes")]
    [InlineData("title = \"\"", "'title'", "text in quotes")]
    [InlineData("link = 5", "'link'", "[link]")]
    [InlineData("[clock]\nevery_ms = 0", "'clock.every_ms'", "from 0.1 to 10000")]
    [InlineData("[clock]\nhertz = 50", "'clock.hertz'", "every_ms")]
    [InlineData("colour = 1", "'colour'", "clock, flags, frame, hid, index, link, request, title, value")]
    [InlineData("[link]\nspeed = 1", "'link.speed'", "baud, data_bits, dtr, handshake, parity, rts, stop_bits")]
    [InlineData("[value]\nsteps = 1", "'value.steps'", "error_limit_mm, inverted, resolution_mm")]
    public void Profile_WithAWrongKeyOrValue_NamesTheKeyAndWhatIsAllowed(string toml, string key, string allowed)
    {
        var problem = Assert.Single(Assert.Throws<ProfileException>(() => ProfileReader.Read("mine", toml)).Problems);
        Assert.Contains("'mine'", problem, StringComparison.Ordinal);
        Assert.Contains(key, problem, StringComparison.Ordinal);
        Assert.Contains(allowed, problem, StringComparison.Ordinal);
        Assert.EndsWith(".", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Profile_WithManyProblems_TellsThemAllAtOnce()
    {
        var refused = Assert.Throws<ProfileException>(() => ProfileReader.Read("mine", """
            colour = "red"
            [link]
            baud = 1
            speed = 9600
            [frame]
            longest = 2
            [value]
            resolution_mm = 7
            """));

        Assert.Equal(
            ["frame.longest", "link.baud", "link.speed", "value.resolution_mm", "colour"],
            refused.Problems.Select(problem => problem.Split('\'')[3]).OrderBy(key => key == "colour").ThenBy(key => key, StringComparer.Ordinal));
        Assert.All(refused.Problems, problem => Assert.Contains(problem, refused.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("baud: 9600")]
    [InlineData("[link\nbaud = 9600")]
    [InlineData("title = \"a\"\ntitle = \"b\"")]
    [InlineData("title = \"open")]
    public void Text_ThatIsNoToml_IsToldAsThat(string text)
    {
        var problem = Assert.Single(Assert.Throws<ProfileException>(() => ProfileReader.Read("mine", text)).Problems);
        Assert.StartsWith("Profile 'mine' is not TOML: ", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_OfAnyKind_IsAProfileOrItsProblems() => Gen.OneOf(
        "title", "link", "frame", "unit", "baud", "=", "=", "\"", "'", "[", "]", "[link]", "[frame]", "\n", "\n", " ", ".", "1", "9600", "true", "mm", "{", "}", ",", "#", "\u0000", "é")
        .Array[0, 14]
        .Sample(words =>
        {
            try
            {
                Assert.Equal("any", ProfileReader.Read("any", string.Concat(words)).Name);
            }
            catch (ProfileException e)
            {
                Assert.NotEmpty(e.Problems);
            }
        });
}
