package drawwell.ui

/** What the shell says by itself, when the core cannot speak. Everything else that a person reads is the core's. */
internal object LastWords {
    const val CLOSE = "Close"
    const val CLOSE_SIGN = "×"
    const val WHAT = "Something in the program went wrong."
    const val WHAT_TO_DO = "What you logged is safe. Close Drawwell and open it again."
    const val NO_CORE = "A part of the program is missing."
    const val NO_CORE_WHAT_TO_DO = "Install Drawwell again. What you logged is safe."
}
