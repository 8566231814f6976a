using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Hoopwright.Server.Storage;

/// <summary>The secrets that open plans: random, long enough never to be guessed, kept only as hashes.</summary>
internal static class Token
{
    /// <summary>256 random bits in 43 letters that need no escaping in an address.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32));

    /// <summary>128 random bits that name something without opening it.</summary>
    public static string NewId() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));

    /// <summary>
    /// What is kept of a token. A plain hash does, since there is nothing to guess: the token is random, not chosen by a person. Finding it by its hash
    /// also means that how long the search takes says nothing about the token.
    /// </summary>
    public static byte[] Hash(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));
}
