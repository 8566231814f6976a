namespace Hoopwright.Orders;

/// <summary>A line of the order that appears, vanishes, or changes what is needed, bought or paid.</summary>
/// <param name="Before">The line of the first plan; null when it appears.</param>
/// <param name="After">The line of the second plan; null when it vanishes.</param>
public sealed record ComparedOrder(OrderLine? Before, OrderLine? After)
{
    /// <summary>The line that says what it is: that of the second plan where there is one.</summary>
    public OrderLine Line => After ?? Before ?? throw new InvalidOperationException("A compared line is in one of the two orders.");
}
