namespace coutil {}
