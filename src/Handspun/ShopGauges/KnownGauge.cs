using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.ShopGauges;

namespace Handspun.ShopGauges;

/// <summary>A gauge that the station listens to, that stands in the shop's book, or both.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="State">How it is; null where the station does not listen to it.</param>
/// <param name="Profile">How it talks; null where the station does not listen to it.</param>
/// <param name="Kept">What the book says of it; null where it says nothing yet.</param>
internal sealed record KnownGauge(string Name, GaugeState? State, GaugeProfile? Profile, ShopGauge? Kept)
{
    /// <summary>The smallest step that it shows, in millimetres; null where nothing says.</summary>
    public double? ResolutionMillimetres => Kept?.ResolutionMillimetres ?? (Profile?.Accuracy.ResolutionMillimetres is > 0 and var step ? step : null);

    /// <summary>The largest error that its papers allow, ± this much in millimetres; null where nothing says.</summary>
    public double? ErrorLimitMillimetres => Kept?.ErrorLimitMillimetres ?? (Profile?.Accuracy.ErrorLimitMillimetres is > 0 and var limit ? limit : null);

    /// <summary>Its newest check; null where it was never checked.</summary>
    public LastCheck? LastCheck => Kept?.LastCheck;
}
