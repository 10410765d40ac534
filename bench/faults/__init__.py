"""Faults planted into real novels, and how many of them are asked about."""
