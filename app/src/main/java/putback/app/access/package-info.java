/** Who may reach the pages over the network: certificates, passwords, and how often one may try. */
@NullMarked
package putback.app.access;

import org.jspecify.annotations.NullMarked;
