package laminate.cli;

/** Says that the user's input cannot be used. Its message is all that the user reads, so it is written for the user. */
final class UnusableInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the complaint.
     *
     * @param message what is wrong and what is accepted, one line a complaint
     */
    UnusableInputException(String message) {
        super(message);
    }
}
