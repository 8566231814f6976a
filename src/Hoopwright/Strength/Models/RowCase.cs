namespace Hoopwright.Strength.Models;

/// <summary>A combination on the row, with which way it leans and whether its film still pulls.</summary>
/// <param name="Case">The combination.</param>
/// <param name="LeanAcross">1 for a row out of plumb to the right, −1 to the left.</param>
/// <param name="LeanAlong">1 for a row out of plumb to the back, −1 to the front.</param>
/// <param name="IsSlack">True where the pull of cold film has crept away.</param>
internal sealed record RowCase(LoadedCase Case, int LeanAcross, int LeanAlong, bool IsSlack)
{
    /// <summary>In words.</summary>
    internal string Words => IsSlack ? Case.Words + ", the film's pull crept away" : Case.Words;
}
