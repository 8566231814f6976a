using System.Reflection;
using Hoopwright.Server.Storage;

namespace Hoopwright.Server.Api;

/// <summary>The link that a request came with, as an argument of an endpoint behind <see cref="LinkAuthentication"/>.</summary>
internal sealed record Link(LinkAccess Access)
{
    public static ValueTask<Link?> BindAsync(HttpContext context, ParameterInfo _) => ValueTask.FromResult(context.User.Identity is LinkIdentity link ? new Link(link.Access) : null);
}
