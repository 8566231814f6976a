using System.Globalization;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Hoopwright.Mutants;

/// <summary>
/// Writes a source file anew with every fault in it, each behind a switch: <c>a &lt; b</c> becomes
/// <c>(Planted.On(7) ? (a &lt;= b) : (a &lt; b))</c>. So one build serves all faults. Lines stay where they are, so that what the
/// compiler does not take can be found and left out.
/// </summary>
internal sealed class Planter(Area area, string file, Func<int> next, Func<int, bool> wanted)
{
    private readonly List<Fault> _faults = [];

    /// <summary>What was planted.</summary>
    public IReadOnlyList<Fault> Faults => _faults;

    /// <summary>The file with its faults.</summary>
    public string Planted(string source) => Text(CSharpSyntaxTree.ParseText(source, new CSharpParseOptions(LanguageVersion.Preview)).GetRoot());

    private string Text(SyntaxNode node)
    {
        if (node is FieldDeclarationSyntax { Modifiers: var modifiers } && modifiers.Any(SyntaxKind.ConstKeyword)) return node.ToFullString();
        if (node is LocalDeclarationStatementSyntax { IsConst: true } or AttributeListSyntax or EnumMemberDeclarationSyntax or ParameterSyntax or PatternSyntax
            or CaseSwitchLabelSyntax or InterpolationAlignmentClauseSyntax or ThrowExpressionSyntax or ThrowStatementSyntax) return node.ToFullString();

        StringBuilder inner = new();
        foreach (SyntaxNodeOrToken child in node.ChildNodesAndTokens())
            inner.Append(child.AsNode() is { } deeper ? Text(deeper) : child.ToFullString());
        string text = inner.ToString();
        if (node is not ExpressionSyntax expression) return text;

        string[] others = [.. Instead(expression).Where(_ => OnOneLine(expression))];
        if (others.Length == 0) return text;
        string before = expression.GetLeadingTrivia().ToFullString(), after = expression.GetTrailingTrivia().ToFullString();
        string kept = text[before.Length..(text.Length - after.Length)];
        StringBuilder planted = new();
        int count = 0;
        foreach (string other in others)
        {
            int number = next();
            if (!wanted(number)) continue;
            _faults.Add(new Fault(number, area, file, expression.GetLocation().GetLineSpan().StartLinePosition.Line + 1, expression.ToString(), other));
            planted.Append(CultureInfo.InvariantCulture, $"(global::Hoopwright.Planted.On({number}) ? ({other}) : ");
            count++;
        }
        return count == 0 ? text : $"{before}{planted}({kept}){new string(')', count)}{after}";
    }

    /// <summary>What may be said instead, by the usual operators: relations, signs, connectives, numbers, least and greatest.</summary>
    private static IEnumerable<string> Instead(ExpressionSyntax expression)
    {
        switch (expression)
        {
            case BinaryExpressionSyntax binary when Operators(binary.Kind()) is { Length: > 0 } operators && !Declares(binary) && !IsText(binary):
                foreach (string other in operators) yield return $"{binary.Left} {other} {binary.Right}";
                break;
            case PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalNotExpression or (int)SyntaxKind.UnaryMinusExpression } unary when !Declares(unary):
                yield return unary.Operand.ToString();
                break;
            case ConditionalExpressionSyntax choice when !Declares(choice):
                yield return $"!({choice.Condition}) ? {choice.WhenTrue} : {choice.WhenFalse}";
                break;
            case LiteralExpressionSyntax { RawKind: (int)SyntaxKind.NumericLiteralExpression, Token.Value: int or double } number:
                yield return number.Token.Value is 0 or 0.0 ? "1" : $"{number} + {number}";
                break;
            case LiteralExpressionSyntax { RawKind: (int)SyntaxKind.TrueLiteralExpression }:
                yield return "false";
                break;
            case LiteralExpressionSyntax { RawKind: (int)SyntaxKind.FalseLiteralExpression }:
                yield return "true";
                break;
            case InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name: IdentifierNameSyntax name } access } call
                when !Declares(call) && Counterpart(name.Identifier.Text) is { } counterpart:
                yield return $"{access.Expression}.{counterpart}{call.ArgumentList}";
                break;
        }
    }

    private static string[] Operators(SyntaxKind kind) => kind switch
    {
        SyntaxKind.LessThanExpression => ["<=", ">="],
        SyntaxKind.LessThanOrEqualExpression => ["<", ">"],
        SyntaxKind.GreaterThanExpression => [">=", "<="],
        SyntaxKind.GreaterThanOrEqualExpression => [">", "<"],
        SyntaxKind.EqualsExpression => ["!="],
        SyntaxKind.NotEqualsExpression => ["=="],
        SyntaxKind.LogicalAndExpression => ["||"],
        SyntaxKind.LogicalOrExpression => ["&&"],
        SyntaxKind.AddExpression => ["-"],
        SyntaxKind.SubtractExpression => ["+"],
        SyntaxKind.MultiplyExpression => ["/"],
        SyntaxKind.DivideExpression => ["*"],
        _ => [],
    };

    private static string? Counterpart(string method) => method switch
    {
        "Min" => "Max",
        "Max" => "Min",
        "MinBy" => "MaxBy",
        "MaxBy" => "MinBy",
        "Any" => "All",
        "All" => "Any",
        "First" => "Last",
        "Last" => "First",
        "OrderBy" => "OrderByDescending",
        "OrderByDescending" => "OrderBy",
        "Sin" => "Cos",
        "Cos" => "Sin",
        "Floor" => "Ceiling",
        "Ceiling" => "Floor",
        _ => null,
    };

    private static bool Declares(SyntaxNode node) => node.DescendantNodesAndSelf().Any(each => each is VariableDesignationSyntax or LambdaExpressionSyntax);

    private static bool IsText(SyntaxNode node) => node.DescendantNodesAndSelf().Any(each => each.IsKind(SyntaxKind.StringLiteralExpression) || each is InterpolatedStringExpressionSyntax);

    private static bool OnOneLine(SyntaxNode node) => !node.ToString().Contains('\n', StringComparison.Ordinal);
}
