"""A whole job on a page: opened from its file, shown, put on paper."""
