"""A whole job: what to repair and how, blanks, tacks, order of work, what it uses up."""
