using System.Text;
using Handspun.Simulation;

namespace Handspun.VirtualGauge.Shaft;

/// <summary>A shaft that a hand turns when it is told to, and the indicator on it: what its display shows at each moment.</summary>
/// <param name="shape">The shaft.</param>
/// <param name="indicator">The indicator.</param>
/// <param name="inch">Whether the indicator is set to inches.</param>
/// <param name="seed">The same seed gives the same noise and the same hands.</param>
internal sealed class ShaftUnderIndicator(ShaftShape shape, Indicator indicator, bool inch, int seed)
{
    private const double RestMillimetres = 0.85;   // where on its travel the plunger rests

    private readonly Random _noise = new(seed);
    private int _spins;
    private HandTurn? _hand;
    private TimeSpan _handFrom;
    private double _turnsBefore;
    private HandMotion? _motion;
    private TimeSpan _motionFrom;

    /// <summary>Whether the hand is still turning.</summary>
    public bool IsTurning(TimeSpan now) => _hand is not null && (now - _handFrom).TotalSeconds < _hand.Seconds;

    /// <summary>Puts the hand to the wheel.</summary>
    public void Turn(TimeSpan now, double turns, double turnsPerSecond)
    {
        _turnsBefore = TurnsAt(now);
        _hand = HandTurn.Create(seed + _spins++, turns, turnsPerSecond);
        _handFrom = now;
        _motion = null;
    }

    /// <summary>Lets the hand do something else than turn; what the indicator rests at afterwards is where the motion ends.</summary>
    public void Move(TimeSpan now, HandMotion motion) => (_motion, _motionFrom) = (motion, now);

    /// <summary>Where the plunger stands, in millimetres, before noise and rounding.</summary>
    public double MillimetresAt(TimeSpan now) => _motion is { } motion
        ? motion.MillimetresAt(Math.Min((now - _motionFrom).TotalSeconds, motion.Seconds))
        : RestMillimetres + shape.HeightAt(TurnsAt(now) * 360);

    /// <summary>The line that the gauge sends now.</summary>
    public byte[] LineAt(TimeSpan now)
    {
        var shown = indicator.Show(MillimetresAt(now), _noise);
        return Encoding.ASCII.GetBytes(IndicatorLine.Of(shown, inch) + "\r\n");
    }

    private double TurnsAt(TimeSpan now) => _turnsBefore + (_hand?.TurnsAt((now - _handFrom).TotalSeconds) ?? 0);
}
