using System.Security.Claims;
using Hoopwright.Server.Storage;

namespace Hoopwright.Server.Api;

/// <summary>Whoever has this link. There are no users: a link is all that the server knows.</summary>
internal sealed class LinkIdentity(LinkAccess access) : ClaimsIdentity(authenticationType: LinkAuthentication.SchemeName)
{
    public LinkAccess Access { get; } = access;
}
