/** Packages that break every rule of the house, to prove that the rules see it. */
package collarwright.testing.house;
