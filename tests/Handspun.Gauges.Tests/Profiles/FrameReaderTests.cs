using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Decoding.Registers;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Profiles;

public class FrameReaderTests
{
    [Theory]
    [InlineData("kind = \"text-columns\"", 1, "'frame.value_at'", "first byte, from 0")]
    [InlineData("kind = \"text-columns\"\nvalue_at = 3", 3, "'frame.value_at'", "[3, 8]")]
    [InlineData("kind = \"text-columns\"\nvalue_at = [250, 8]", 3, "'frame.value_at'", "within 256 bytes")]
    [InlineData("kind = \"text-pattern\"", 1, "'frame.pattern'", "(?<value>")]
    [InlineData("kind = \"text-pattern\"\npattern = '(?<value>['", 3, "'frame.pattern'", "no regular expression")]
    [InlineData("kind = \"text-pattern\"\npattern = '[0-9]+'", 3, "'frame.pattern'", "no group 'value'")]
    [InlineData("kind = \"text-pattern\"\npattern = '(?<value>[0-9]+)(?<word>[a-z])'", 3, "'frame.pattern'", "has a group 'word'")]
    [InlineData("kind = \"text-pattern\"\npattern = '(?<value>(a+)+)\\2'", 3, "'frame.pattern'", "exponential time")]
    [InlineData("kind = \"text-pattern\"\npattern = '(?<value>((a{99}){99}){99})'", 3, "'frame.pattern'", "no large counts")]
    [InlineData("cut = \"terminator\"", 1, "'frame.end'", "it is needed")]
    [InlineData("end = \"\\r\"", 2, "'frame.end'", "nowhere else")]
    [InlineData("cut = \"silence\"", 1, "'frame.gap_ms'", "it is needed")]
    [InlineData("gap_ms = 5", 2, "'frame.gap_ms'", "with \"line\" it has no meaning")]
    [InlineData("start = [2]", 2, "'frame.start'", "only with cut")]
    [InlineData("cut = \"length\"\nlength = 8", 3, "'frame.length'", "does not show where a frame begins")]
    [InlineData("cut = \"length\"\nlength = 3\nstart = [1, 2]\nend = [3]", 3, "'frame.length'", "leaves no room")]
    [InlineData("cut = \"prefixed\"\ncheck = \"sum\"", 1, "'frame.count_at'", "it is needed")]
    [InlineData("cut = \"prefixed\"\ncount_at = 1", 3, "'frame.count_at'", "does not show where a frame begins")]
    [InlineData("start = \"\\u0100\"", 2, "'frame.start'", "1 to 256 bytes")]
    [InlineData("kind = \"nibbles\"\nlength = 4\nend = [13]", 1, "'frame.digits'", "counts most first")]
    [InlineData("kind = \"nibbles\"\nlength = 4\nend = [13]\ndigits = [0, 1]\nsign_at = 9", 3, "'frame.length'", "takes 5 bytes")]
    [InlineData("kind = \"nibbles\"\nlength = 4\nend = [13]\ndigits = [0, 1]\nminus = 16", 6, "'frame.minus'", "from 0 to 15")]
    [InlineData("kind = \"bits\"\nlength = 3\ngap_ms = 5", 1, "'frame.offset'", "its bits, 1 to 32")]
    [InlineData("kind = \"bits\"\nlength = 3\ngap_ms = 5\noffset = 0\nwidth = 33", 6, "'frame.width'", "from 1 to 32")]
    [InlineData("kind = \"bits\"\nlength = 3\ngap_ms = 5\noffset = 0\nwidth = 25", 3, "'frame.length'", "takes 4 bytes")]
    [InlineData("kind = \"bits\"\nlength = 3\ngap_ms = 5\noffset = 0\nwidth = 8\nsign = \"bit\"", 1, "'frame.sign_at'", "it is needed")]
    [InlineData("kind = \"bits\"\nlength = 3\ngap_ms = 5\noffset = 0\nwidth = 8\n[flags]\nhold = 24", 8, "'flags.hold'", "from 0 to 23")]
    [InlineData("kind = \"registers\"", 1, "'frame.register'", "from 0 as it goes over the wire")]
    [InlineData("kind = \"registers\"\nregister = 0\naddress = 248", 4, "'frame.address'", "from 1 to 247")]
    [InlineData("kind = \"registers\"\nregister = 0\ncount = 1\ntype = \"float-32\"", 4, "'frame.count'", "as far as the value")]
    [InlineData("kind = \"registers\"\nregister = 65535\ntype = \"float-32\"", 1, "'frame.count'", "beyond the last register")]
    [InlineData("in = [\"in\", 5]", 2, "'frame.in'", "list of such")]
    [InlineData("[flags]\nhold = \"\"", 3, "'flags.hold'", "text in quotes")]
    [InlineData("[flags]\nheld = \"H\"", 3, "'flags.held'", "alarm, battery_low, hold, index, overrange, reversed")]
    public void Frame_WithAWrongKeyOrValue_IsToldWithItsLineAndKey(string frame, int line, string key, string rule)
    {
        var problems = Assert.Throws<ProfileException>(() => ProfileReader.Read("mine", "[frame]\n" + frame)).Problems;
        var problem = problems.First(sentence => sentence.Contains(key, StringComparison.Ordinal));
        Assert.Contains(rule, problem, StringComparison.Ordinal);
        Assert.StartsWith($"Profile 'mine', line {line}: ", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Nibbles_ThatSayEverything_AreReadAsTheySay()
    {
        var frame = Assert.IsType<NibbleFormat>(ProfileReader.Read("mine", """
            [frame]
            kind = "nibbles"
            packing = "low-first"
            length = 8
            start = "\u0002"
            end = [3]
            check = "xor"
            check_from = 1
            digits = [9, 8, 7]
            sign_at = 2
            minus = [8, 13]
            plus = [0, 12]
            decimals = 2
            unit_at = 3
            mm = 2
            in = [1, 3]
            [flags]
            index = 33
            """).Frame);

        Assert.Equal((NibblePacking.LowFirst, 2, 3, 2), (frame.Layout.Packing, frame.Layout.SignAt, frame.Layout.UnitAt, frame.Layout.Decimals));
        Assert.Equal([9, 8, 7], frame.Layout.Digits);
        Assert.Equal([8, 13], frame.Layout.Minus);
        Assert.Equal([2], frame.Layout.Millimetre);
        Assert.Equal([new FlagBit(33, GaugeFlags.None, true)], frame.Flags);
        Assert.True(frame.TellsIndex);
        Assert.Equal((8, 1, 1), (frame.Cut.Length, frame.Cut.Check.From, frame.Cut.Check.Behind));
    }

    [Fact]
    public void Registers_AskWithTheirOwnFrame_UnlessTheProfileSaysOtherwise()
    {
        const string frame = "[frame]\nkind = \"registers\"\nregister = 107\ncount = 3\naddress = 17\n";
        var profile = ProfileReader.Read("mine", frame);

        Assert.Equal(new RegisterRead { Address = 17, From = 0x6B, Count = 3 }, Assert.IsType<RegisterFormat>(profile.Frame).Read);
        Assert.Equal("1103006B00037687", Convert.ToHexString(profile.Request.Send.Span));   // the published frame
        Assert.Equal(TimeSpan.FromMilliseconds(50), profile.Request.Every);
        Assert.Equal("R", System.Text.Encoding.ASCII.GetString(ProfileReader.Read("mine", frame + "[request]\nsend = \"R\"\n").Request.Send.Span));
    }

    [Fact]
    public void Scale_ForInches_IsThatOfMillimetres_UnlessItIsNamed()
    {
        Assert.Equal(0.5, ProfileReader.Read("mine", "[value]\nscale = 0.5").Value.Factor(GaugeUnit.Inch));
        var value = ProfileReader.Read("mine", "[value]\nscale = 0.5\nscale_in = 0.25\ninverted = true").Value;
        Assert.Equal((-0.5, -0.25), (value.Factor(GaugeUnit.Millimetre), value.Factor(GaugeUnit.Inch)));
    }
}
