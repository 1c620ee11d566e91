using Handspun.Simulation;
using Handspun.Simulation.Speech;

namespace Handspun.VirtualGauge.Shaft;

/// <summary>A shaft that a hand turns when it is told to, and the indicator on it: what its display shows at each moment.</summary>
/// <param name="shape">The shaft.</param>
/// <param name="indicator">The indicator.</param>
/// <param name="speak">How it puts what it shows into bytes.</param>
/// <param name="seed">The same seed gives the same noise and the same hands.</param>
internal sealed class ShaftUnderIndicator(ShaftShape shape, Indicator indicator, Func<Shown, byte[]> speak, int seed)
{
    private const double RestMillimetres = 0.85;   // where on its travel the plunger rests

    private readonly Random _noise = new(seed);
    private int _spins;
    private HandTurn? _hand;
    private TimeSpan _handFrom;
    private double _turnsBefore;
    private HandMotion? _motion;
    private TimeSpan _motionFrom;
    private long _toothShown;

    /// <summary>Whether the indicator is set to inches.</summary>
    public bool Inch { get; set; }

    /// <summary>Whether its battery is nearly empty.</summary>
    public bool BatteryLow { get; set; }

    /// <summary>Whether a sensor beside it sees the shaft's zero pass, once a turn.</summary>
    public bool HasIndex { get; init; }

    /// <summary>How often it sees something pass in a turn: once, or each tooth of a disc.</summary>
    public int TeethPerTurn { get; init; } = 1;

    /// <summary>Whether the last tooth of the disc is missing, so that zero is after the gap.</summary>
    public bool MissesTooth { get; init; }

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

    /// <summary>The frame that the gauge sends now.</summary>
    public byte[] FrameAt(TimeSpan now)
    {
        var turns = _motion is { TurnsAt: { } crank } ? crank(Math.Min((now - _motionFrom).TotalSeconds, _motion.Seconds)) : TurnsAt(now);
        var tooth = (long)Math.Floor(turns * TeethPerTurn);
        var passed = HasIndex && tooth > _toothShown && !(MissesTooth && tooth % TeethPerTurn == TeethPerTurn - 1);
        _toothShown = tooth;
        return speak(new Shown(indicator.Show(MillimetresAt(now), _noise), Inch, BatteryLow, passed));
    }

    private double TurnsAt(TimeSpan now) => _turnsBefore + (_hand?.TurnsAt((now - _handFrom).TotalSeconds) ?? 0);
}
