namespace Hoopwright.Frames;

/// <summary>One value for each of a node's six freedoms: forces and moments (N, N·m), shifts and turns (m, rad) or stiffnesses.</summary>
internal readonly record struct SixValues(double X, double Y, double Z, double AboutX, double AboutY, double AboutZ)
{
    internal double this[int freedom] => freedom switch { 0 => X, 1 => Y, 2 => Z, 3 => AboutX, 4 => AboutY, _ => AboutZ };

    internal bool IsFinite =>
        double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z) && double.IsFinite(AboutX) && double.IsFinite(AboutY) && double.IsFinite(AboutZ);
}
