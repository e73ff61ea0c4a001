//! Our numbers against published ones, one file a standard or handbook.
