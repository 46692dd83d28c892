namespace TyingClass.Balance.Shapes;

/// <summary>
/// How far a solid of revolution reaches about its own centroid: the mean square distance along its axis and along any direction across it, m². Times the mass
/// they are its second moments; inertia about the axis is 2 m × across, about a transverse axis m × (along + across).
/// </summary>
public readonly record struct Spread(double AlongM2, double AcrossM2);
