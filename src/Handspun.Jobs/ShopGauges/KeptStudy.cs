namespace Handspun.Jobs.ShopGauges;

/// <summary>A repeatability and reproducibility study of a gauge. It is never changed after it was made.</summary>
public sealed class KeptStudy
{
    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>The gauge that it belongs to.</summary>
    public int ShopGaugeId { get; init; }

    /// <summary>When it was typed in.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Who measured what.</summary>
    public required StudySheet Sheet { get; init; }
}
