/** The command line: reads a job folder, writes the plan; the only package that touches files or prints. */
@NullMarked
package org.woodyield.job;

import org.jspecify.annotations.NullMarked;
