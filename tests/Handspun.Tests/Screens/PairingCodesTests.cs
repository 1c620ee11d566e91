using System.Net;
using Handspun.Screens;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Tests.Screens;

public sealed class PairingCodesTests
{
    private static readonly IPAddress Phone = IPAddress.Parse("192.0.2.7");   // RFC 5737: for documents and tests
    private readonly FakeTimeProvider _time = new();
    private readonly PairingCodes _codes;

    public PairingCodesTests() => _codes = new(_time);

    [Fact]
    public void Code_IsTakenOnce_HoweverItIsTyped()
    {
        var code = _codes.Current.Text;

        Assert.Equal(PairingAnswer.Taken, _codes.TryUse($" {code[..4].ToLowerInvariant()}-{code[4..]} ", Phone));
        Assert.Equal(PairingAnswer.Wrong, _codes.TryUse(code, Phone));
        Assert.NotEqual(code, _codes.Current.Text);
    }

    [Fact]
    public void Code_StaysTheSameWhileItIsGood_AndIsNotTakenAfterwards()
    {
        var code = _codes.Current;
        _time.Advance(PairingCode.Life - TimeSpan.FromSeconds(1));
        Assert.Equal(code, _codes.Current);

        _time.Advance(TimeSpan.FromSeconds(1));

        Assert.Equal(PairingAnswer.Wrong, _codes.TryUse(code.Text, Phone));
        Assert.NotEqual(code.Text, _codes.Current.Text);
    }

    [Fact]
    public void WrongCodes_TooMany_ShutThatAddressOutForAWhile_AndNoOther()
    {
        for (var tried = 0; tried < PairingCodes.TriesAllowed; tried++)
        {
            Assert.Equal(PairingAnswer.Wrong, _codes.TryUse("AAAAAAAA", Phone));
        }

        Assert.Equal(PairingAnswer.TooMany, _codes.TryUse(_codes.Current.Text, Phone));
        Assert.Equal(PairingAnswer.TooMany, _codes.TryUse(_codes.Current.Text, Phone.MapToIPv6()));
        Assert.Equal(PairingAnswer.Taken, _codes.TryUse(_codes.Current.Text, IPAddress.Parse("192.0.2.8")));

        _time.Advance(PairingCodes.Pause);

        Assert.Equal(PairingAnswer.Taken, _codes.TryUse(_codes.Current.Text, Phone));
    }

    // RFC 4291, 2.5.4: one machine chooses from all addresses of its /64. The prefix is of RFC 3849, for documents and tests.
    [Fact]
    public void WrongCodes_FromManyAddressesOfOneMachine_ShutItOut()
    {
        for (var tried = 1; tried <= PairingCodes.TriesAllowed; tried++)
        {
            _codes.TryUse("AAAAAAAA", IPAddress.Parse($"2001:db8::{tried:x}"));
        }

        Assert.Equal(PairingAnswer.TooMany, _codes.TryUse(_codes.Current.Text, IPAddress.Parse("2001:db8::ffff")));
        Assert.Equal(PairingAnswer.Taken, _codes.TryUse(_codes.Current.Text, IPAddress.Parse("2001:db8:0:1::1")));
    }

    [Fact]
    public void Nothing_IsTakenForACode()
    {
        _ = _codes.Current;

        Assert.Equal(PairingAnswer.Wrong, _codes.TryUse("", Phone));
        Assert.Equal(PairingAnswer.Wrong, new PairingCodes(_time).TryUse("", Phone));   // none has been shown yet
    }
}
