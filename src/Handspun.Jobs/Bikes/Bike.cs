namespace Handspun.Jobs.Bikes;

/// <summary>A machine that comes to the shop.</summary>
public sealed class Bike
{
    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>Who made it.</summary>
    public required string Make { get; set; }

    /// <summary>What it is called.</summary>
    public required string Model { get; set; }

    /// <summary>Model year, 1885 or later.</summary>
    public required int Year { get; set; }

    /// <summary>Vehicle identification number, where it is known.</summary>
    public string? Vin { get; set; }

    /// <summary>Its number plate as it was written down, where it is known.</summary>
    public string? Plate { get; set; }

    /// <summary>What the instrument showed last, in the instrument's own unit.</summary>
    public int? Odometer { get; set; }

    /// <summary>Year, make and model in one line.</summary>
    public string Title => $"{Year} {Make} {Model}";
}
