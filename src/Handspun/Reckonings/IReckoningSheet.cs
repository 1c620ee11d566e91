using Handspun.Jobs.Lengths;
using Handspun.Metrology.Reckonings;

namespace Handspun.Reckonings;

/// <summary>One reckoning of the trade: what is typed for it, and how it is worked out. A new one is a sheet and a line in <see cref="ReckoningSheets"/>.</summary>
internal interface IReckoningSheet
{
    /// <summary>Its name in addresses.</summary>
    string Code { get; }

    /// <summary>What it answers, in a few words.</summary>
    string Title { get; }

    /// <summary>What is typed, in order, empty.</summary>
    IReadOnlyList<ReckoningField> Fields(LengthUnit unit);

    /// <summary>Works it out; what is missing or cannot be is said in the answer, with the cautions of the step.</summary>
    Reckoning Work(TypedReckoning typed);
}

/// <summary>One thing to type or to choose.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Hint">How to write it or where it comes from, in a few words.</param>
internal sealed record ReckoningField(string Name, string Label, string Hint)
{
    /// <summary>What to choose from; null where it is typed.</summary>
    public IReadOnlyList<string>? Choices { get; init; }
}
