namespace Hoopwright.Plans;

/// <summary>The classes of soil of the International Building Code, table 1806.2.</summary>
public enum SoilClass
{
    /// <summary>Crystalline bedrock.</summary>
    Bedrock,

    /// <summary>Sedimentary and foliated rock.</summary>
    SedimentaryRock,

    /// <summary>Sandy gravel and gravel.</summary>
    Gravel,

    /// <summary>Sand, silty sand, clayey sand, silty gravel and clayey gravel.</summary>
    Sand,

    /// <summary>Clay, sandy clay, silty clay, clayey silt, silt and sandy silt.</summary>
    Clay,

    /// <summary>Mud, organic soil, peat or fill that was not compacted: the code gives no values, and someone must test it.</summary>
    Soft,
}
