using System.Text.Json;

namespace Handspun.Metrology.Tests.Reference;

/// <summary>A regression of the NIST Statistical Reference Datasets with what NIST certifies (nist-linear.json).</summary>
/// <param name="Parameters">The certified parameters, the constant first.</param>
/// <param name="Deviations">Their certified standard deviations.</param>
/// <param name="Residual">The certified standard deviation of the residuals.</param>
/// <param name="Rows">The data: y, then one or more x.</param>
internal sealed record CertifiedRegression(double[] Parameters, double[] Deviations, double Residual, double[][] Rows)
{
    public static CertifiedRegression Of(string name)
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Reference", "nist-linear.json")));
        return document.RootElement.GetProperty(name).Deserialize<CertifiedRegression>(JsonSerializerOptions.Web)!;
    }
}
