using Hoopwright.Strength;

namespace Hoopwright.Tests.Strength;

/// <summary>What every check must be able to do.</summary>
internal static class Checks
{
    /// <summary>A finite utilisation, a limit in words, finite values on the way, formulas with a place in a source.</summary>
    internal static void SaysWhy(ICheck check)
    {
        Assert.True(double.IsFinite(check.Utilisation) && check.Utilisation >= 0);
        Assert.NotEmpty(check.Governs);
        Assert.NotEmpty(check.Worked);
        Assert.All(check.Worked, value => Assert.True(double.IsFinite(value.Value) && value.Says.Length > 0 && value.Symbol.Length > 0, value.Symbol));
        Assert.NotEmpty(check.Formulas);
        Assert.All(check.Formulas, formula => Assert.True(formula.Text.Length > 0 && formula.Source.Title.Length > 0));
    }
}
