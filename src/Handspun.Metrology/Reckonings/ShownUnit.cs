namespace Handspun.Metrology.Reckonings;

/// <summary>In what unit lengths stand in a worked formula.</summary>
public enum ShownUnit
{
    /// <summary>Millimetres, to three places.</summary>
    Millimetres,

    /// <summary>Inches, to four places.</summary>
    Inches,
}
