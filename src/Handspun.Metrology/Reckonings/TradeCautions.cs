namespace Handspun.Metrology.Reckonings;

/// <summary>What to mind, in plain words (common practice, no source).</summary>
internal static class TradeCautions
{
    public const string ManualFirst = "The maker's manual and its figures come first.";

    public const string HandOnly = "See that the machine cannot roll or tip, take the plugs out and switch the ignition off; turn by hand only.";

    public const string PushrodsFree =
        "Loosen, adjust or cut a pushrod only when both pushrods of that cylinder turn freely between finger and thumb: then both valves are shut and the lifters on their base circles.";

    public const string NoGrinder = "Cut pushrods with bolt cutters or a saw, never with a grinder: chips and grit get into the engine. Cover the openings.";

    public const string LetLiftersSettle = "Let the lifters bleed down before you turn on, until both pushrods turn freely again; else a valve can meet a piston or another valve.";

    public const string SpringsUnderLoad =
        "Valve springs are under load: use a spring compressor that fits, wear eye protection, keep face and hands out of the line of the spring, and hold the valve up before the keepers come out.";

    public const string OwnNumbers =
        "That a cam is called bolt-in does not prove that these springs have room for it: measure the installed height and the coil bind of these springs.";

    public const string FingersOutOfGears = "Keep fingers and sleeves out of the gears, and let nobody touch the wheel or the starter meanwhile.";
}
