package putback.plan.tools;

import putback.plan.ToolUse;
import putback.tightening.toolbox.Have;

/** A tool of a plan, and whether the garage has it. */
public record TrayTool(ToolUse use, Have have) {}
